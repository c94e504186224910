// Asks this service, with its token where one is needed, and says in plain words what went wrong.

const TOKEN = "noticeparse.token";
const PATIENCE = 3; // tries where the service says that it is busy

// Why there is no answer; `kind` is that of the problem, `away` where nothing answers.
export class Trouble extends Error {
  constructor(kind, words, { errors = [], status = 0 } = {}) {
    super(words);
    this.kind = kind;
    this.errors = errors;
    this.status = status;
  }
}

let askForToken = null;

// `ask` shows a person the question for the token and promises it, or null.
export function onTokenNeeded(ask) {
  askForToken = ask;
}

export async function postJson(path, value, options = {}) {
  return post(path, JSON.stringify(value), { type: "application/json", ...options });
}

// The answer to a body, a Response that is a success. Throws Trouble, and AbortError where
// `signal` was given up.
export async function post(path, body, { type, signal } = {}) {
  for (let attempt = 1; ; attempt += 1) {
    const answer = await asked(path, { method: "POST", body, signal, headers: headers(type) });
    if (answer.ok) return answer;
    const trouble = await troubleOf(answer);
    const isBusy = answer.status === 429 || trouble.kind === "busy";
    if (isBusy && attempt < PATIENCE) {
      await rest(Number(answer.headers.get("Retry-After")) || 2, signal);
    } else if (answer.status !== 401 || !(await hasNewToken(attempt))) {
      throw trouble;
    }
  }
}

export async function get(path) {
  const answer = await asked(path, { headers: headers() });
  if (!answer.ok) throw await troubleOf(answer);
  return answer;
}

async function asked(path, request) {
  try {
    return await fetch(path, { cache: "no-store", ...request });
  } catch (error) {
    if (error.name === "AbortError") throw error;
    const words = "The reader on this machine does not answer. Start `noticeparse serve` again, or look whether it still runs. Your text is kept.";
    throw new Trouble("away", words);
  }
}

function headers(type) {
  const stated = type ? { "Content-Type": type } : {};
  const token = sessionStorage.getItem(TOKEN);
  return token ? { ...stated, Authorization: `Bearer ${token}` } : stated;
}

async function hasNewToken(attempt) {
  const wasGiven = sessionStorage.getItem(TOKEN) !== null;
  const token = askForToken ? await askForToken(wasGiven || attempt > 1) : null;
  if (!token) return false;
  sessionStorage.setItem(TOKEN, token);
  return true;
}

async function troubleOf(answer) {
  let problem = {};
  try {
    problem = await answer.json();
  } catch {
    // Not from this service: a proxy before it, for instance.
  }
  const kind = (problem.type ?? "").split(":").pop() || "unknown";
  const words = problem.title
    ? `${problem.title}: ${problem.detail}.`
    : `The service answered with ${answer.status}.`;
  return new Trouble(kind, words, { errors: problem.errors ?? [], status: answer.status });
}

function rest(seconds, signal) {
  return new Promise((done, fail) => {
    const timer = setTimeout(done, seconds * 1000);
    signal?.addEventListener("abort", () => {
      clearTimeout(timer);
      fail(signal.reason);
    });
  });
}
