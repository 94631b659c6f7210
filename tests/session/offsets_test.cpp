// Each line's moment by the clock that its device showed then.
#include "make.hpp"
#include "session/offsets.hpp"
#include "words/moments.hpp"

#include <doctest/doctest.h>

namespace offsets_test {

using namespace session;

TEST_CASE("a session tells its offset when it begins, and again when the clock is set") {
  make::Writer w; // +01:00
  const Ref winter = w.put("b", Opened{"Blue"});
  w.put("", ClockJumped{0, "2027-03-28T03:00:00+02:00"});
  const Ref summer = w.put("b", Felt{});
  make::Writer other("zzzzzzzz");
  std::get<Began>(other.log.lines[0].event).local = "no time of day";
  const Ref unknown = other.put("b", Felt{});
  const Offsets offsets = offsets_of({w.log, other.log});
  CHECK(offset_of(offsets, winter) == 60);
  CHECK(offset_of(offsets, summer) == 120);
  CHECK(offset_of(offsets, unknown) == std::nullopt);
  CHECK(offset_of(offsets, {"aaaaaaaa", 4}) == std::nullopt);
  CHECK(offset_of({}, winter) == std::nullopt);
}

TEST_CASE("offsets are read as they are written") {
  for (const int offset : {0, 60, -210, 840, 345})
    CHECK(words::utc_offset_in(words::local_time(1795617120000, offset)) == offset);
  CHECK(words::utc_offset_in("2026-11-25T14:32:00Z") == 0);
  for (const char* none : {"", "+1:00", "2026-11-25T14:32:00", "2026-11-25T14:32:00+15:00",
                           "2026-11-25T14:32:00+01:60", "2026-11-25T14:32:00+0x:00"})
    CHECK(words::utc_offset_in(none) == std::nullopt);
}

}
