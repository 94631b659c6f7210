#include "commands/run.hpp"

int main(int count, char** words) { return commands::run({words + 1, words + count}).value_or(2); }
