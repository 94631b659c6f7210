// The batch sheet: one batch on paper, to keep with the pans or to give along.
#pragma once

#include "paper/facts.hpp"

#include <string>
#include <vector>

namespace paper {

// One HTML file with nothing outside it, which prints on A4 and on US Letter: what the paint is,
// what went in, where it stood, how it was made, its trail, what could not be read of it, and what
// to be careful about. An ordinary batch takes one page.
std::string sheet(const Handed& handed);

// Several batches, each on a page of its own; at least one.
std::string sheets(std::vector<Handed> all);

}
