// A batch that was closed stays closed until it is taken up again.
#include "bench/due.hpp"
#include "hands.hpp"

namespace closing_test {

using namespace hands;

namespace {

session::Progress progress(Hands& h, const std::string& batch) {
  return fold_of(h.b, batch)->progress;
}

}

TEST_CASE("what was offered to go on with, and then closed, is not opened by Slab's tab") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const std::string id = h.b.batch;
  Hands later;
  later.give(Tick{});
  later.open_after(h, 60, Screen::today);
  if (later.b.batch.empty()) later.tap("slab");
  REQUIRE(later.b.batch == id);
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) later.tap(pad);
  REQUIRE(progress(later, id) == session::Progress::closed);
  later.tap("slab");
  CHECK(later.b.batch.empty());
  CHECK(progress(later, id) == session::Progress::closed);
}

TEST_CASE("paint that came back from its jar, was poured and closed waits on no slab") {
  Hands h;
  h.gather();
  const std::string id = h.b.batch;
  h.tap("more");
  h.tap("from_jar");
  h.tap("pans");
  h.tap("new_pan");
  h.tap("slab");
  h.tap("gather");
  h.tap("close");
  REQUIRE(progress(h, id) == session::Progress::closed);
  for (const Due& one : due(h.b, h.now())) CHECK(one.what != Due::What::on_slab);
  Hands later;
  later.open_after(h, 60, Screen::today);
  CHECK(later.b.screen == Screen::today);
  CHECK(later.lines.empty());
}

TEST_CASE("closed on two tablets, it is open again with one tap") {
  Hands h;
  h.gather();
  const std::string id = h.b.batch;
  session::Log other = h.b.logs.front();
  other.session = "0ther";
  h.tap("close");
  session::Line closed = h.lines.back();
  REQUIRE(std::holds_alternative<session::Closed>(closed.event));
  closed.n = 1;
  other.lines = {other.lines.front(), closed};
  h.give(Arrived{{other}, {}, {}, {}});
  h.tap("take_up");
  REQUIRE(h.b.batch == id);
  CHECK(progress(h, id) != session::Progress::closed);
}

}
