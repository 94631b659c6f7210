// Contenders measured in turns in one run, so that whatever else the machine does meets them alike;
// what counts is the ratio to the baseline. Nothing here judges a time.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace speed {

// Milliseconds that something takes.
double timed(const std::function<void()>& what);

struct Contender {
  std::string name;
  std::function<double()> once; // ms of one go; what it prepares and checks is not in them
};

struct Rounds {
  int rounds = 0;
  int burst = 1;   // goes in a row of one contender in each round
  int warm_up = 2; // rounds not counted
};

// The first is the baseline. Every round in another order. Prints for each contender a line of
// fields parted by tabs: "row", group, name, count, median ms, 99th percentile ms, ms more than the
// baseline, ratio to the baseline. The last two are medians over the rounds, of a round's median
// against the baseline's in the same round.
void race(const std::string& group, const std::vector<Contender>& contenders, const Rounds& rounds);

// A check that failed makes the measurement worthless: says so and ends the program with status 1.
void need(bool holds, const std::string& what);

// Whole number above 0 of an argument; else as need().
int count_of(const char* text);

}
