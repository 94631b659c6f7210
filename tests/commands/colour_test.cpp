// The colour of a swatch, as somebody types for it.
#include "colour/scene.hpp"
#include "commands/tool.hpp"

namespace colour_test {

using namespace tool;

namespace {

constexpr colour::Lab blue{38, 8, -42};

struct Photos : Studio {
  std::string photo(const std::string& file, const std::vector<scene::Swatch>& swatches) const {
    scene::Table table;
    table.swatches = swatches;
    scene::Camera camera;
    camera.read_noise = 0.002;
    camera.shot_noise = 0.01;
    scene::Dice dice(5);
    rig::put(path / file, scene::jpeg_of(scene::photograph(table, camera, dice), 90));
    return (path / file).string();
  }
};

}

TEST_CASE("one swatch: its colour and how sure, found or named") {
  const Photos s;
  const std::string photo = s.photo("one.jpg", {{{110, 70, 100, 100}, blue}});
  const Ran found = run({"colour", photo});
  CHECK(found.status == 0);
  CHECK(found.err.empty());
  CHECK(has(found.out, "D50"));
  CHECK(has(found.out, "D65"));
  CHECK_FALSE(has(found.out, "CIEDE2000"));
  const Ran named = run({"colour", photo, "--swatch", "120,80,80,80", "--paper", "20,80,70,80"});
  CHECK(named.status == 0);
  CHECK(has(named.out, "swatch at 120,80,80,80"));
}

TEST_CASE("two swatches on one photo, and two photos: how far apart, and which way") {
  const Photos s;
  const std::string both =
      s.photo("both.jpg", {{{40, 70, 90, 100}, blue}, {{190, 75, 90, 90}, {48, 8, -42}}});
  const Ran together = run({"colour", both});
  CHECK(together.status == 0);
  CHECK(has(together.out, "CIEDE2000"));
  CHECK(has(together.out, "the second beside the first:"));
  CHECK(has(together.out, "much lighter: L* "));
  CHECK(has(together.out, "as bright: C* "));
  CHECK(has(together.out, "both on one photo"));

  const std::string one = s.photo("one.jpg", {{{110, 70, 100, 100}, blue}});
  const std::string other = s.photo("other.jpg", {{{110, 70, 100, 100}, {52, 8, -42}}});
  const Ran parted = run({"colour", other, "--against", one});
  CHECK(parted.status == 0);
  CHECK(has(parted.out, "on two photos"));
  CHECK(has(parted.out, other + " beside " + one + ":")); // as the newer one is
  CHECK(has(parted.out, "much lighter: L* 3"));
  const Ran same = run({"colour", one, "--against", one});
  CHECK(same.status == 0);
  CHECK(has(same.out, "difference 0.0"));
}

TEST_CASE("against a batch: the swatch's photo that was kept with it last") {
  const Photos s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string one = s.photo("one.jpg", {{{110, 70, 100, 100}, blue}});
  const std::string other = s.photo("other.jpg", {{{110, 70, 100, 100}, {52, 8, -42}}});
  const Ran none = s.read({"colour", one, "--against", "last"});
  CHECK(none.status == 1);
  CHECK(has(none.err, "neither a photo nor a batch"));
  REQUIRE(s.read({"photo", one, "--batch", "last", "--of", "pan"}).status == 0);
  CHECK(s.read({"colour", one, "--against", "last"}).status == 1);
  REQUIRE(s.read({"photo", other, "--batch", "last", "--of", "swatch"}).status == 0);
  REQUIRE(s.read({"photo", one, "--batch", "last", "--of", "swatch"}).status == 0);
  const Ran ran = s.read({"colour", one, "--against", "last"});
  CHECK(ran.status == 0);
  CHECK(has(ran.out, "difference 0.0"));
}

TEST_CASE("against a batch: the reading that was kept with it, whatever else its photo shows") {
  const Photos s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string both =
      s.photo("both.jpg", {{{40, 70, 100, 110}, blue}, {{190, 75, 90, 90}, {48, 8, -42}}});
  const std::string one = s.photo("one.jpg", {{{110, 70, 90, 90}, {48, 8, -42}}});
  REQUIRE(s.read({"colour", both, "--swatch", "200,85,70,70", "--batch", "last"}).status == 0);
  const Ran ran = s.read({"colour", one, "--against", "last"});
  CHECK_MESSAGE(ran.status == 0, ran.err);
  CHECK(has(ran.out, "last, as it was read and kept"));
  CHECK(has(ran.out, "difference 0."));
  const Ran itself = s.read({"colour", both, "--swatch", "200,85,70,70", "--against", "last"});
  CHECK(has(itself.out, "difference 0.0 (CIEDE2000), nine in ten 0.0 to 0."));
  CHECK(has(itself.out, "both on one photo"));
}

TEST_CASE("kept with a batch, a swatch is the colour of its paint") {
  const Photos s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string one = s.photo("one.jpg", {{{110, 70, 100, 100}, blue}});
  const auto kept = [&] { return s.read({"show", "last"}).out; };
  CHECK_FALSE(has(kept(), "swatch"));
  const Ran ran = s.read({"colour", one, "--batch", "last"});
  CHECK_MESSAGE(ran.status == 0, ran.err);
  CHECK(has(ran.out, "kept as photos/"));
  const std::string said = ran.out.substr(ran.out.find("on a screen #"), 20);
  CHECK(has(kept(), said));
  REQUIRE(s.read({"photo", one, "--batch", "last", "--of", "swatch"}).status == 0);
  CHECK(has(kept(), said)); // kept once more, not read

  const std::string other = s.photo("other.jpg", {{{110, 70, 100, 100}, {52, 8, -42}}});
  REQUIRE(s.read({"colour", other, "--batch", "last"}).status == 0);
  CHECK_FALSE(has(kept(), said));
}

TEST_CASE("what cannot be kept as a batch's colour is said, and nothing is written") {
  const Photos s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string both =
      s.photo("both.jpg", {{{40, 70, 90, 100}, blue}, {{190, 75, 90, 90}, {48, 8, -42}}});
  const std::string bare = s.photo("bare.jpg", {});
  const Ran which = s.read({"colour", both, "--batch", "last"});
  CHECK(which.status == 1);
  CHECK(has(which.err, "--swatch"));
  CHECK(s.read({"colour", bare, "--batch", "last"}).status == 1);
  CHECK(s.read({"colour", both, "--swatch", "50,80,70,80", "--batch", "none"}).status == 1);
  CHECK(s.files().size() == 1);
  CHECK_FALSE(std::filesystem::exists(s.path / "photos"));
  CHECK(s.read({"colour", both, "--swatch", "50,80,70,80", "--batch", "last"}).status == 0);
  CHECK(s.files().size() == 2);
}

TEST_CASE("what cannot be told says why, and what makes no sense says how") {
  const Photos s;
  const std::string photo = s.photo("one.jpg", {{{110, 70, 100, 100}, blue}});
  for (const char* box :
       {"1,2,3", "1,2,3,4,5", "a,b,c,d", "1,2,0,4", "-1,2,3,4", "1,2,3,4,", "9999999,1,1,1"}) {
    CAPTURE(box);
    const Ran ran = run({"colour", photo, "--swatch", box});
    CHECK(ran.status == 1);
    CHECK(has(ran.err, "left,top,width,height"));
  }
  CHECK(run({"colour", photo, "--swatch", ""}).status == 2);
  CHECK(has(run({"colour", photo, "--swatch", "300,0,90,90", "--paper", "1,1,40,40"}).err,
            "beyond the photo"));
  CHECK(has(run({"colour", photo, "--swatch", "5000,0,100,100"}).err, "beyond the photo"));
  CHECK(has(run({"colour", photo, "--swatch", "120,80,80,80", "--paper", "120,80,80,80"}).err,
            "lie over each other"));
  CHECK(has(run({"colour", s.photo("bare.jpg", {})}).err, "no swatch is seen"));
  const std::string several =
      s.photo("several.jpg", {{{100, 70, 60, 100}, blue}, {{160, 70, 60, 100}, {50, 50, 30}}});
  CHECK(has(run({"colour", several}).err, "--swatch X,Y,W,H"));
  CHECK(run({"colour", (s.path / "none.jpg").string()}).status == 1);
  CHECK(run({"colour", photo, "--against", (s.path / "none.jpg").string()}).status == 1);
  CHECK(run({"colour"}).status == 2);
}

TEST_CASE("a batch says how far its colour is from the last good one of its paint") {
  const Photos s;
  const std::string first = std::string(small_batch) + "wait 60\ntap pass\nwait 200\n"
                                                       "tap pass\ntap gather\ntap pans\n"
                                                       "tap new_pan\n"
                                                       "tap pour_g\ntype 1\nwait 70h\ntap judge\n"
                                                       "tap became good\n";
  REQUIRE(s.play(first).status == 0);
  std::string second = small_batch;
  second.replace(second.find("2026-11-20"), 10, "2026-12-20");
  second.replace(second.find("seed 7"), 6, "seed 8");
  second.replace(second.find("Evening blue"), 12, "Later blue");
  REQUIRE(s.play(second).status == 0);
  const auto keep = [&](const char* file, const colour::Lab& lab, const char* batch) {
    const std::string photo = s.photo(file, {{{110, 70, 100, 100}, lab}});
    const Ran ran = s.read({"colour", photo, "--batch", batch});
    REQUIRE_MESSAGE(ran.status == 0, ran.err);
  };
  keep("one.jpg", blue, "Evening blue");
  CHECK_FALSE(has(s.read({"show", "Evening blue"}).out, "beside "));
  CHECK_FALSE(has(s.read({"show", "Later blue"}).out, "beside "));
  keep("other.jpg", {58, 8, -42}, "Later blue");
  const std::string said = s.read({"show", "Later blue"}).out;
  CHECK(has(said, "beside Evening blue: difference"));
  CHECK(has(said, "lighter"));
  CHECK_FALSE(has(s.read({"show", "Evening blue"}).out, "beside "));

  // The command says the same of the same two photos, by what repeats have shown too.
  const auto limits = [](const std::string& text) {
    const std::size_t from = text.find("nine in ten");
    return text.substr(from, text.find_first_of(":\n)", from) - from);
  };
  const std::string photo = (s.path / "other.jpg").string(),
                    first_photo = (s.path / "one.jpg").string();
  CHECK(limits(s.read({"colour", photo, "--against", "Evening blue"}).out) == limits(said));
  const std::string before = limits(said);
  keep("again.jpg", {58.3, 8, -42}, "Later blue");
  keep("once_more.jpg", {57.8, 8, -42}, "Later blue");
  keep("other.jpg", {58, 8, -42}, "Later blue"); // as it was read last
  const std::string after = limits(s.read({"show", "Later blue"}).out);
  const Ran ran = s.read({"colour", photo, "--against", first_photo});
  CHECK(limits(ran.out) == after);
  CHECK(has(ran.out, "photographed"));
}

}
