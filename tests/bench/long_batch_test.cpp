// What is kept from tap to tap of the batch on the slab is what a look at all of it would give.
#include "bench/book_index.hpp"
#include "hands.hpp"
#include "session/ranges.hpp"

#include <cmath>
#include <random>

namespace long_batch_test {

using namespace bench;
using hands::Hands;

namespace {

bool tap_if_there(Hands& h, const std::string& pad) {
  if (!h.shows(pad)) return false;
  h.tap(pad);
  return true;
}

BookEntry entry_anew(Hands& h) {
  Bench anew = h.b;
  anew.folds = {};
  index_all(anew, h.now());
  return anew.index.of.at(h.b.batch);
}

bool same(const std::map<Measured, ToolUse>& a, const std::map<Measured, ToolUse>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const auto& x, const auto& y) {
    return x.first == y.first && !(x.second < y.second) && !(y.second < x.second);
  });
}

void check_index(Hands& h) {
  const BookEntry& kept = h.b.index.of.at(h.b.batch);
  const BookEntry anew = entry_anew(h);
  CHECK(kept.name == anew.name);
  CHECK(kept.text == anew.text);
  CHECK(kept.opened_at == anew.opened_at);
  CHECK(kept.has_left_slab == anew.has_left_slab);
  CHECK(same(kept.tools, anew.tools));
  const auto some = [](const auto& used) { // what was taken back leaves a nought
    auto out = used;
    for (auto& [card, uses] : out)
      std::erase_if(uses, [](const auto& use) { return use.second == 0; });
    std::erase_if(out, [](const auto& of) { return of.second.empty(); });
    return out;
  };
  CHECK(some(kept.used_ug) == some(anew.used_ug));
}

}

TEST_CASE("what the Book knows of the batch on the slab goes on with every tap") {
  const std::vector<std::string> pads{"add gum_12", "add gum_12", "add water", "felt too_sticky",
                                      "felt right", "undo",       "undo",      "pass"};
  Hands h;
  h.begin();
  std::mt19937 random(3);
  for (int i = 0; i < 300; ++i) {
    h.pass_ms(1000 * static_cast<std::int64_t>(random() % 30));
    tap_if_there(h, pads[random() % pads.size()]);
    if (h.b.batch.empty()) h.begin(); // its beginning was taken back
    CAPTURE(i);
    if (i % 10 == 9) check_index(h);
  }
}

namespace {

void check_expected(const Bench& b) {
  const Expected& kept = b.expected;
  const auto anew = session::expectation(b.learning.ranges, kept.question);
  REQUIRE(anew.has_value() == kept.answer.has_value());
  if (!anew) return;
  const auto& weights = kept.answer->prediction.weights;
  REQUIRE(weights.size() == anew->prediction.weights.size());
  for (std::size_t i = 0; i < weights.size(); ++i)
    REQUIRE(std::abs(weights[i] - anew->prediction.weights[i]) < 1e-9);
}

}

TEST_CASE("what is expected of the paint goes on with every note, and drop, and undo") {
  const std::vector<std::string> pads{"add gum_12", "add water",  "felt too_sticky", "felt right",
                                      "add gum_12", "felt right", "felt too_loose",  "undo"};
  Hands h;
  h.begin();
  std::mt19937 random(4);
  std::size_t most = 0;
  for (int i = 0; i < 200; ++i) {
    h.pass_ms(1000 * static_cast<std::int64_t>(random() % 30));
    tap_if_there(h, pads[random() % pads.size()]);
    if (h.b.batch.empty()) h.begin();
    CAPTURE(i);
    check_expected(h.b);
    most = std::max(most, h.b.expected.question.notes.size());
  }
  CHECK(most > 20);
}

TEST_CASE("undo goes back over the last tap that stands") {
  Hands h;
  h.begin();
  for (int i = 0; i < 5; ++i) h.tap("add gum_12");
  h.tap("felt right");
  const auto drops = [&] {
    return std::count_if(h.b.folded->entries.begin(), h.b.folded->entries.end(), [](const auto& e) {
      const auto* added = std::get_if<session::Added>(&e.event);
      return added && !e.withdrawn && added->unit == session::Unit::drops;
    });
  };
  h.tap("undo");
  CHECK(h.b.folded->feelings.empty());
  for (int left = 4; left >= 2; --left) {
    h.tap("undo");
    CHECK(drops() == left);
  }
  h.tap("add gum_12");
  h.tap("undo");
  CHECK(drops() == 2);
}

}
