// The document of this service, shown by the vendored bundle; no validator elsewhere is asked.
SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#document",
  deepLinking: true,
  validatorUrl: null,
  defaultModelsExpandDepth: 0,
});
