// A beginner's first four batches, by hands that do what the screen says: the first, the same made
// again from Today, one with water where binder was meant, and a blend in spoons. What is said
// before each step is kept beside it (beginner/story.txt), to be read by people and compared word
// for word; SLABSIDE_WRITE_STORIES=1 writes it anew.
#include "../bench/obeying.hpp"
#include "bench/learning.hpp"
#include "paint/range/learn_bytes.hpp"
#include "screens/phrases.hpp"

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace {

using namespace bench;
using hands::Hands;

std::string said(const SlabView& slab) {
  std::string out = screens::right_words(slab.advice, slab.softening, slab.room_guessed);
  if (const auto gum = screens::gum_words(slab.advice); !gum.empty()) out += "; " + gum;
  if (slab.softening && !screens::is_right_in_all(slab.advice))
    out += "; " + screens::softening_words(*slab.softening);
  return out;
}

std::string line_of(Hands& h) {
  const SlabView slab = h.slab();
  const session::Batch& batch = *h.b.folded;
  const auto& flow = batch.standing.flow_now;
  return screens::minutes_seconds(batch.clock) + "  " +
         (slab.ratio ? paint::written(slab.ratio->value, 1) + " g/10 g" : "") +
         (flow ? ", flow " + paint::written(flow->value, 2) : "") + "  " + said(slab) + "\n";
}

// Until the screen says that it is there. Only paint that was made so is too loose on the way.
void make(Hands& h, double wants, std::string& told, session::Feel most = session::Feel::right) {
  int steps = 0;
  while (++steps < 60 && h.slab().advice.kind != Advice::there) {
    told += line_of(h);
    const session::Feel felt = obeying::do_what_is_said(h, wants);
    if (felt != session::Feel::right && felt != session::Feel::wont_move &&
        felt != session::Feel::too_sticky)
      CHECK(felt <= most);
  }
  told += line_of(h) + "\n";
  CHECK(h.slab().advice.kind == Advice::there);
  CHECK(std::abs(std::log(h.b.folded->standing.flow_now->value / wants)) < 0.17);
}

void learn(Hands& h) {
  bool more = wants_to_study(h.b);
  while (more) {
    const Effects effects = step(h.b, Study{}, h.now());
    more = effects.study;
    if (effects.learn)
      more = step(h.b, Fitted{paint::learn_bytes(effects.learn->problem)}, h.now()).study;
  }
}

// Off the slab, into pans, and looked at a day later: it became good.
std::string finish(Hands& h) {
  const std::string id = h.b.batch;
  for (const char* pad : {"gather", "today"}) h.tap(pad);
  h.tap("due jar " + id);
  h.tap("pour_all");
  learn(h);
  h.wait(1.2 * 86400);
  h.tap("today");
  h.tap("due verdict " + id);
  h.tap("became good");
  h.tap("today");
  return id;
}

double wanted(const Hands& h) { return std::exp(h.b.expected.answer->band.middle); }

void begin(Hands& h, const std::string& pigment, const std::string& g) {
  h.tap("plan");
  h.choose(pigment);
  h.tap("weigh");
  h.type(g);
  h.tap("begin");
}

std::string text_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream all;
  all << file.rdbuf();
  return all.str();
}

}

TEST_CASE("a beginner's first four batches, made as the screen says, end right and smooth") {
  Hands h;
  std::string told = "the first: cobalt blue\n";
  begin(h, "pb28", "12");
  const double cobalt = 1.25 * wanted(h);
  make(h, cobalt, told);
  const std::string first = finish(h);

  told += "the same again, from Today\n";
  h.tap("again " + first);
  h.tap("begin");
  if (h.slab().advice.kind == Advice::weigh_pigment) h.tap("add pb28"), h.type("12");
  make(h, cobalt, told);
  finish(h);

  told += "cadmium red, with two spoons of water where binder was meant\n";
  h.tap("plan");
  if (!h.b.plan.blend.empty()) h.choose(h.b.plan.blend.front().card);
  begin(h, "pr108", "15");
  const double red = wanted(h);
  obeying::tap_amount(h, "1/2 tsp", "gum_12");
  obeying::tap_amount(h, "1 tsp", "water");
  obeying::tap_amount(h, "1/2 tsp", "water");
  obeying::work_in(h, red);
  make(h, red, told, session::Feel::too_loose);
  finish(h);

  told += "a spoon of blue and a quarter of ochre\n";
  h.tap("plan");
  while (!h.b.plan.blend.empty()) h.choose(h.b.plan.blend.front().card);
  h.choose("pb28");
  h.choose("py43");
  h.tap("say_in spoons");
  for (const auto& [pigment, spoons] : {std::pair{"pb28", "1"}, {"py43", "0.25"}}) {
    h.tap(std::string("parts ") + pigment);
    h.type(spoons);
  }
  h.tap("begin");
  make(h, wanted(h), told);

  const std::string path = std::string(SLABSIDE_ROOT) + "/tests/cases/beginner/story.txt";
  if (std::getenv("SLABSIDE_WRITE_STORIES")) std::ofstream(path, std::ios::binary) << told;
  CHECK(told == text_of(path));
}
