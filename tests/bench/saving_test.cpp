#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/studio_says.hpp"

namespace saving_test {

using namespace bench;
using hands::Hands;

TEST_CASE("a store that was cleared is said, and stays to be read when all is saved again") {
  Hands h;
  h.begin();
  h.give(Saved{h.lines.back().n, ""});
  const words::Error gone{words::StudioSay::disk_file_gone, {"a.jsonl"}};
  h.give(SaveFailed{gone, true});
  CHECK_FALSE(h.slab().undo.saved);
  CHECK(h.slab().undo.unsaved == h.lines.size());
  h.give(Saved{h.lines.back().n, ""});
  CHECK(h.slab().undo.saved);
  CHECK_FALSE(h.slab().save_failure);
  CHECK(h.slab().notice.error == words::Error{words::BenchSay::saved_lines_gone, {}});
}

}
