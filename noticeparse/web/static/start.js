// Sends the text of the form to this service and shows the findings and the records it answers.

const element = (id) => document.getElementById(id);
element("address").textContent = location.origin;

element("form").addEventListener("submit", async (event) => {
  event.preventDefault();
  show("Reading …", [], "");
  const headers = { "Content-Type": "application/json" };
  if (element("token").value) headers.Authorization = `Bearer ${element("token").value}`;
  try {
    const body = JSON.stringify({ text: element("text").value });
    const answer = await fetch("/v1/parse", { method: "POST", headers, body });
    const record = await answer.json();
    if (answer.ok) tell(record);
    else refuse(answer.status, record);
  } catch {
    show("The service does not answer. Is it still running?", [], "");
  }
});

function refuse(status, problem) {
  element("token-row").hidden = status !== 401 && element("token-row").hidden;
  const isAsked = status === 401 && element("token").value === "";
  show(isAsked ? "This service asks for its token." : `${problem.title}: ${problem.detail}`, [], "");
}

function tell(bulletin) {
  const actions = bulletin.notices.flatMap((notice) => notice.charts).flatMap((chart) => chart.actions);
  const unusable = actions.filter((action) => !action.usable).length;
  const counts = [
    counted(bulletin.notices.length, "notice"),
    counted(actions.length, "action"),
    `${unusable} not to be used`,
    counted(bulletin.findings.length, "finding"),
  ];
  show(`${counts.join(", ")}. ${bulletin.caution}`, bulletin.findings, JSON.stringify(bulletin, null, 2));
}

function counted(count, word) {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}

function show(words, findings, records) {
  element("said").textContent = words;
  element("findings").replaceChildren(...findings.map(line));
  element("findings").hidden = findings.length === 0;
  element("records").textContent = records;
  element("records").hidden = records === "";
}

function line(finding) {
  const item = document.createElement("li");
  const where = finding.span ? `line ${finding.span.line}: ` : "";
  item.className = finding.severity;
  item.textContent = `${where}${finding.severity}: ${finding.message}. ${finding.hint ?? ""}`;
  return item;
}
