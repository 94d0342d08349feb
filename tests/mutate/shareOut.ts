/** Each worker takes the next job when it is free; answers come in the order of the jobs. */
export async function shareOut<Worker, Job, Answer>(
  workers: readonly Worker[],
  jobs: readonly Job[],
  work: (worker: Worker, job: Job) => Promise<Answer>,
): Promise<Answer[]> {
  const answers: Answer[] = [];
  const queue = jobs.entries();
  const takeAll = async (worker: Worker): Promise<void> => {
    for (const [place, job] of queue) answers[place] = await work(worker, job);
  };
  await Promise.all(workers.map(takeAll));
  return answers;
}
