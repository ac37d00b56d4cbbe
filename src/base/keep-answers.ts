/** Makes a function of a text that works each text out once. */
export function keepAnswers<Answer>(ask: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const answer = ask(text);
    known.set(text, answer);
    return answer;
  };
}
