"""The HTTP service: requests in, the writers' output or a problem out; needs the extra `web`.

`app.create_app` makes it.  Texts are read in worker processes, by `work`; what runs in the server
itself never looks into a text, so that one large or hostile body stalls nobody.
"""
