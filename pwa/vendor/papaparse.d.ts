declare const Papa: {
  parse(text: string, how: { skipEmptyLines: "greedy" }): { data: string[][] };
};
export default Papa;
