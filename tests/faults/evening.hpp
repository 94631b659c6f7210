// An evening at the slab, played by the same effect runner as the window's on a computer in memory,
// and what must be found of it afterwards.
#pragma once

#include "commands/play.hpp"
#include "faults/perishable.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <vector>

namespace faults {

inline const Path studio_folder = "/studio", fallback_folder = "/state/adrift";

// Long runs are asked for by SLABSIDE_LONG, other seeds by SLABSIDE_SEED=N (1 unless said).
bool is_long();
std::uint32_t seed();

struct Played {
  int status = -1;
  std::string err;
  std::vector<session::Line> lines; // all that was tapped, saved or not
  std::int64_t confirmed = -1;      // lines up to here were shown as saved
  bool said = false;                // some save was said to have failed
};

struct Spoilt {
  std::optional<disk::Fault> home, fallback;
};

// Plays until the power fails. With `stand_in` there is another folder for when the studio fails.
Played play(Computer& computer, const std::string& script, bool fallback = true,
            const Spoilt& spoilt = {});

// A small batch, from dry pigment to the jar. Another day is another session.
std::string small_evening(int day = 20);
// That one, or in a long run a larger one of the demo's.
std::string evening();

std::vector<session::File> files_of(Computer& computer);

// Fails unless every line that was confirmed is there once, as it was tapped and in order, and none
// is there that was not tapped. Every batch folds.
void check_left(const std::vector<session::File>& files, const std::vector<Played>& evenings);

// Fails if anything beyond a torn or missing end is wrong with any of the files.
void check_only_torn(const std::vector<session::File>& files);

}
