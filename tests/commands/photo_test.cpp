#include "commands/tool.hpp"
#include "studio/photos.hpp"

#include <cstdlib>

namespace photo_test {

using namespace tool;

namespace {

const std::string pictures = SLABSIDE_ROOT "/tests/studio/pictures/";

// One batch, and this device's id kept in the same folder instead of at this computer's.
struct WithBatch : Studio {
  WithBatch() {
    ::setenv("XDG_STATE_HOME", (path / "state").c_str(), 1);
    REQUIRE(play(small_batch).status == 0);
  }
  ~WithBatch() { ::unsetenv("XDG_STATE_HOME"); }

  Ran keep(const std::string& picture, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"photo", picture, "--batch", "last", "--of", "swatch"};
    words.insert(words.end(), more.begin(), more.end());
    return read(words);
  }
  Ran check() const { return run({"check", name}); }
  rig::Path photo(const std::string& picture) const {
    const std::string ending = picture.substr(picture.rfind('.'));
    return path / "photos" / (studio::sha256(rig::bytes_of(pictures + picture)) + ending);
  }
};

}

TEST_CASE("show names each photo, and says where its file is gone") {
  const Studio s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string dot = std::string(SLABSIDE_ROOT) + "/tests/studio/pictures/base.jpg";
  REQUIRE(s.read({"photo", dot, "--batch", "last", "--of", "dot"}).status == 0);
  const std::string there = s.read({"show", "last"}).out;
  CHECK(has(there, "dot: photos/"));
  CHECK_FALSE(has(there, "not in the studio"));
  std::filesystem::remove_all(s.path / "photos");
  CHECK(has(s.read({"show", "last"}).out, "not in the studio any more. Put photos/"));
}

TEST_CASE("a photo is kept, named in a session of its own, and found again by check") {
  const WithBatch studio;
  const Ran ran = studio.keep(pictures + "base.jpg");
  CHECK(ran.status == 0);
  CHECK(ran.err.empty());
  CHECK(has(ran.out, studio.photo("base.jpg").filename().string()));
  CHECK(rig::bytes_of(studio.photo("base.jpg")) == rig::bytes_of(pictures + "base.jpg"));
  CHECK(studio.keep(pictures + "two.png").status == 0);
  CHECK(studio.files().size() == 3);
  CHECK(studio.check().status == 0);

  // After all that was said of the batch, whatever the clocks say.
  std::int64_t latest = 0;
  std::vector<std::int64_t> photos;
  for (const auto& [name, bytes] : studio.files())
    for (const session::Line& line : session::read_file(name, bytes).lines) {
      if (line.batch.empty()) continue;
      const bool photo = std::holds_alternative<session::Photo>(line.event);
      if (photo) photos.push_back(line.at);
      if (!photo) latest = std::max(latest, line.at);
    }
  REQUIRE(photos.size() == 2);
  CHECK(photos[0] > latest);
  CHECK(photos[1] > latest);
  CHECK(photos[0] != photos[1]);
}

TEST_CASE("a photo that goes or changes later is damage") {
  const WithBatch studio;
  REQUIRE(studio.keep(pictures + "two.png").status == 0);
  rig::put(studio.photo("two.png"), "something else");
  const Ran changed = studio.check();
  CHECK(changed.status == 1);
  CHECK(has(changed.out, studio.photo("two.png").filename().string()));
  CHECK(studio.keep(pictures + "two.png").status == 1); // never written over
  CHECK(rig::bytes_of(studio.photo("two.png")) == "something else");
  std::filesystem::remove(studio.photo("two.png"));
  CHECK(studio.check().status == 1);
  CHECK(studio.keep(pictures + "two.png").status == 0); // had again
  CHECK(studio.check().status == 0);
}

TEST_CASE("what is no photo, no batch or no kind of thing is said, and nothing is written") {
  const WithBatch studio;
  const std::string text = studio.script("no picture");
  for (const Ran& ran :
       {studio.keep(text), studio.keep(studio.name), studio.keep(studio.name + "/none"),
        studio.read({"photo", pictures + "two.png", "--batch", "none", "--of", "dot"}),
        studio.read({"photo", pictures + "two.png", "--batch", "last", "--of", "cat"}),
        studio.keep(pictures + "two.png", {"--fault", "none"})}) {
    CHECK(ran.status == 1);
    CHECK_FALSE(ran.err.empty());
  }
  for (const Ran& ran : {studio.read({"photo", pictures + "two.png", "--batch", "last"}),
                         studio.read({"photo", pictures + "two.png", "--of", "dot"})}) {
    CHECK(ran.status == 2);
    CHECK(has(ran.err, "--batch"));
  }
  CHECK(studio.files().size() == 1);
  CHECK_FALSE(std::filesystem::exists(studio.path / "photos"));
}

TEST_CASE("a disk that fails is said, and no line names what is not there") {
  const WithBatch studio;
  for (int n = 1; n < 8; ++n) {
    const Ran ran =
        studio.keep(pictures + "two.png", {"--fault", "fail-from:" + std::to_string(n) + ":EIO"});
    CHECK(ran.status == 1);
    CHECK_FALSE(ran.err.empty());
    CHECK(studio.check().status == 0);
  }
}

}
