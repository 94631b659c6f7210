const ends = new WeakMap(); // test -> what is to be done

// Done when the test has ended, well or not: the last thing that was begun ends first (a browser before
// the folder it writes to), and each whatever becomes of another.
export function at_end(test, end) {
  if (!ends.has(test)) {
    const all = [];
    ends.set(test, all);
    test.after(async () => {
      const faults = [];
      while (all.length > 0) await Promise.resolve().then(all.pop()).catch((error) => faults.push(error));
      if (faults.length > 0) throw new AggregateError(faults, faults.join('\n'));
    });
  }
  ends.get(test).push(end);
}
