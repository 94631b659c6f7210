// Which of the files in a studio's folder `told` is offered.
#include "disk/rig.hpp"
#include "studio/told_files.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

namespace told_files_test {

namespace {

paint::ToldRange told(double ln_demand, const std::string& from) {
  paint::ToldRange told;
  told.pigments = {"pb28"};
  told.ln_demands = {ln_demand};
  told.covariance = {0.01};
  told.class_offset = {0, 0.1};
  told.strength = {3.9, 1};
  told.hand = paint::usual_theta();
  told.batches = 12;
  told.from = from;
  return told;
}

struct Friends {
  rig::Folder studio;
  std::unique_ptr<disk::Files> files = disk::posix_files();
  int minute = 0;

  void put(const std::string& name, const std::string& bytes) {
    const auto file = studio.path / studio::told_folder / name;
    std::filesystem::create_directories(file.parent_path());
    rig::put(file, bytes);
    const auto at = std::filesystem::file_time_type::clock::now() + std::chrono::minutes(++minute);
    std::filesystem::last_write_time(file, at);
  }
  auto newest() {
    return studio::newest_told(*files, studio.path, [](const paint::ToldRange& file) {
      return file.from == "f00df00df00d";
    });
  }
};

}

TEST_CASE("what a file of this day says already is not written once more") {
  Friends f;
  const auto write = [&](double ln_demand) {
    const auto file =
        studio::write_told(*f.files, f.studio.path, "2026-11-25", told(ln_demand, ""));
    REQUIRE(file);
    return file->filename().string();
  };
  CHECK(write(0.4) == "2026-11-25.json");
  CHECK(write(0.4) == "2026-11-25.json");
  CHECK(write(0.5) == "2026-11-25-2.json");
  CHECK(write(0.5) == "2026-11-25-2.json");
}

TEST_CASE("the newest of them is offered, but for the studio's own and what is no such file") {
  Friends f;
  CHECK_FALSE(*f.newest());
  f.put("first.json", bytes_of(told(0.4, "")));
  f.put("second.json", bytes_of(told(0.5, "0123456789ab")));
  f.put("own.json", bytes_of(told(0.6, "f00df00df00d")));
  f.put("notes.txt", "bring brushes");
  const auto found = f.newest();
  REQUIRE((found && *found));
  CHECK((*found)->name == "second.json");
  CHECK_FALSE((*found)->passed_over);
}

TEST_CASE("a later file that cannot be used hides none, and is named") {
  Friends f;
  f.put("good.json", bytes_of(told(0.4, "")));
  f.put("absurd.json", bytes_of(told(4.9, "")));
  f.put("half.json", "{\"format\":");
  const auto found = f.newest();
  REQUIRE((found && *found));
  CHECK((*found)->name == "good.json");
  REQUIRE((*found)->passed_over);
  CHECK(words::message(*(*found)->passed_over).find("half.json") != std::string::npos);
}

TEST_CASE("where none can be used it is said why") {
  Friends f;
  f.put("absurd.json", bytes_of(told(-4.9, "")));
  const auto found = f.newest();
  REQUIRE_FALSE(found);
  CHECK(found.error().what == words::Sentence(words::StudioSay::told_file_refused));
  CHECK(words::message(found.error()).find("something is wrong with it") != std::string::npos);
}

}
