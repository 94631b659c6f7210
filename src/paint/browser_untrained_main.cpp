// What is expected where nobody has noted anything, as JSON: node says it while the page is built.
// To reckon it takes the whole learner, which the page has in its worker alone.
#include "paint/range/learn_bytes.hpp"

#include <cstdio>

int main() { std::puts(paint::bytes_of(*paint::learn({})).c_str()); }
