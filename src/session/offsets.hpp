// Minutes east of UTC by the clock of the device that wrote a line, as its session says: where it
// began, and anew wherever its clock was set.
#pragma once

#include "session/batch.hpp"
#include "session/reader.hpp"

#include <map>
#include <optional>

namespace session {

using Offsets = std::map<Ref, int>; // from that line of its session on

void note_offset(Offsets& offsets, const std::string& session, const Line& line);
Offsets offsets_of(const std::vector<Log>& logs);

// Absent where the session does not say.
std::optional<int> offset_of(const Offsets& offsets, const Ref& line);
std::optional<int> offset_of(const Offsets& offsets, const Batch& batch); // where it was opened

}
