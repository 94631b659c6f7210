// What is no plain file is said by whatever reads a studio; what lies in the fallback is known to
// whatever reads one; and an output that takes no more is an exit status.
#include "commands/tool.hpp"

#include <sys/stat.h>

#include <array>

namespace odd_files_test {

using namespace tool;

namespace {

std::string whole() {
  return bytes_of({{"", began()}, {"7f3a91c2", session::Opened{"Stone"}}, {"", session::Left{}}});
}

constexpr std::array<const char*, 3> odd{"folder.jsonl", "link.jsonl", "pipe.jsonl"};

struct Odd : Studio {
  Odd() {
    rig::put(sessions / "a.jsonl", whole());
    rig::put(path / "elsewhere", whole());
    std::filesystem::create_directory(sessions / "folder.jsonl");
    std::filesystem::create_symlink(path / "elsewhere", sessions / "link.jsonl");
    REQUIRE(::mkfifo((sessions / "pipe.jsonl").c_str(), 0600) == 0);
  }
};

// A part of a session in the fallback folder, of which home knows the beginning.
struct Adrift : Studio {
  rig::Path fallback = path / "fallback";
  Adrift() {
    REQUIRE(
        play(small_batch, {"--fallback", fallback.string(), "--fault", "fail-from:30"}).status ==
        0);
    REQUIRE(std::filesystem::exists(fallback / "sessions"));
  }
};

}

TEST_CASE("links, folders and pipes among the sessions are named by check, mend, pack and show") {
  const Odd s;
  const std::string out = (s.path / "new").string(), zip = (s.path / "p.zip").string();
  const Ran check = run({"check", s.name}), shown = s.read({"list"});
  const Ran mend = run({"mend", "--studio", s.name, "--out", out});
  const Ran pack = run({"pack", "--studio", s.name, "--out", zip});
  CHECK(check.status == 1);
  CHECK(mend.status == 1);
  CHECK(pack.status == 1);
  CHECK(has(check.out, "3 damaged places"));
  for (const char* name : odd) {
    CHECK(has(check.out, name));
    CHECK(has(mend.out, name));
    CHECK(has(pack.out, name));
    CHECK(has(shown.err, name));
  }
  CHECK(std::filesystem::exists(rig::Path(out) / "sessions" / "a.jsonl"));
  CHECK_FALSE(std::filesystem::exists(rig::Path(out) / "sessions" / "link.jsonl"));
}

TEST_CASE("a file too large for a session is named by check and mend, and left") {
  const Studio s;
  rig::put(s.sessions / "a.jsonl", whole());
  rig::put(s.sessions / "b.jsonl", "");
  std::filesystem::resize_file(s.sessions / "b.jsonl", std::uint64_t{2} << 30);
  const Ran check = run({"check", s.name});
  CHECK(check.status == 1);
  CHECK(has(check.out, "b.jsonl” is too large"));
  const Ran mend = run({"mend", "--studio", s.name, "--out", (s.path / "new").string()});
  CHECK(mend.status == 1);
  CHECK(has(mend.out, "b.jsonl” is too large"));
}

TEST_CASE("check knows of what lies in the fallback, and mend brings it home") {
  const Adrift s;
  const std::string fallback = s.fallback.string(), out = (s.path / "new").string();
  const Ran check = run({"check", s.name, "--fallback", fallback});
  CHECK(check.status == 0);
  CHECK(has(check.out, "saved elsewhere while the studio failed: 1"));
  const Ran mend = run({"mend", "--studio", s.name, "--fallback", fallback, "--out", out});
  CHECK(mend.status == 0);
  const auto show = [](const std::string& studio, const std::string& from) {
    return run({"show", "last", "--json", "--studio", studio, "--fallback", from}).out;
  };
  CHECK(show(out, "") == show(s.name, fallback));
  CHECK(show(out, "") != show(s.name, ""));
}

TEST_CASE("line ends that some program changed are named once, and mended") {
  const Studio s;
  std::string changed;
  for (const char c : whole()) changed += c == '\n' ? "\r\n" : std::string(1, c);
  rig::put(s.sessions / "a.jsonl", changed);
  const Ran check = run({"check", s.name});
  CHECK(check.status == 1);
  CHECK(has(check.out, "1 file, 3 lines: 1 damaged place, 0 notes"));
  CHECK(has(check.out, "CR LF"));
  const std::string out = (s.path / "new").string();
  CHECK(run({"mend", "--studio", s.name, "--out", out}).status == 0);
  CHECK(rig::bytes_of(rig::Path(out) / "sessions" / "a.jsonl") == whole());
}

TEST_CASE("a byte order mark before the first line is named, costs nothing, and is mended") {
  const Studio s;
  rig::put(s.sessions / "a.jsonl", "\xEF\xBB\xBF" + whole());
  const Ran check = run({"check", s.name});
  CHECK(check.status == 1);
  CHECK(has(check.out, "1 file, 3 lines: 1 damaged place, 0 notes"));
  CHECK(has(check.out, "a.jsonl: line 1, byte 0: some program has put a byte order mark"));
  const std::string out = (s.path / "new").string();
  CHECK(run({"mend", "--studio", s.name, "--out", out}).status == 0);
  CHECK(rig::bytes_of(rig::Path(out) / "sessions" / "a.jsonl") == whole());
}

TEST_CASE("a folder that is no studio is said to be none, an empty one is empty") {
  const rig::Folder folder;
  const std::string name = folder.path.string(), out = (folder.path / "out").string();
  CHECK(run({"list", "--studio", name, "--fallback", ""}).status == 0);
  rig::put(folder.path / "letter.txt", "Dear");
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"list", "--studio", name},
                                             {"show", "last", "--studio", name},
                                             {"range", "--studio", name},
                                             {"table", "--studio", name},
                                             {"check", name},
                                             {"mend", "--studio", name, "--out", out},
                                             {"pack", "--studio", name, "--out", out}}) {
    auto all = words;
    all.insert(all.end(), {"--fallback", ""});
    const Ran ran = run(all);
    CAPTURE(words.front());
    CHECK(ran.status == (words.front() == "check" || words.front() == "mend" ? 2 : 1));
    CHECK(has(ran.err, "is no studio"));
  }
  CHECK_FALSE(std::filesystem::exists(out));
}

TEST_CASE("an option that names nothing is refused, and nothing is made") {
  const Studio s;
  for (const char* option : {"--studio", "--studio="}) {
    std::vector<std::string> words{"play", s.script(small_batch), option};
    if (option == std::string("--studio")) words.push_back("");
    const Ran ran = run(words);
    CHECK(ran.status == 2);
    CHECK(has(ran.err, "--studio wants something behind it"));
  }
  CHECK_FALSE(std::filesystem::exists("sessions"));
}

TEST_CASE("an option without its value is named, and not the one behind it") {
  const Ran ran = run({"labels", "--batch", "--out", "page.html"});
  CHECK(ran.status == 2);
  CHECK(has(ran.err, "--batch wants something behind it"));
}

TEST_CASE("where a word is missing the command's usage is said") {
  CHECK(has(run({"show"}).err, "A word is missing: slabside show BATCH [--studio DIR] [--json]\n"));
  CHECK(has(run({"check"}).err, "A word is missing: slabside check DIR\n"));
}

TEST_CASE("what is no file is said to be what it is") {
  const Studio s;
  REQUIRE(::mkfifo((s.path / "pipe").c_str(), 0600) == 0);
  const std::string pipe = (s.path / "pipe").string(), none = (s.path / "none").string();
  const auto said = [&](const std::vector<std::string>& words, const char* what) {
    const Ran ran = run(words);
    CHECK(ran.status == 1);
    CHECK(has(ran.err, what));
  };
  for (const auto& [name, what] :
       {std::pair{s.name, "is a folder"}, {pipe, "no plain file"}, {none, none.c_str()}}) {
    said({"hear", name, "--studio", s.name, "--fallback", ""}, what);
    said({"play", name, "--studio", s.name}, what);
    said({"photo", name, "--batch", "last", "--of", "pan", "--studio", s.name, "--fallback", ""},
         what);
  }
}

TEST_CASE("a file that is not what it should be is named, and why") {
  const Studio s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string file = (s.path / "holiday").string();
  rig::put(file, "");
  for (const std::vector<std::string>& words :
       {std::vector<std::string>{"photo", file, "--batch", "last", "--of", "pan"},
        {"bring", file},
        {"hear", file}}) {
    CAPTURE(words[0]);
    std::vector<std::string> whole = words;
    whole.insert(whole.end(), {"--studio", s.name, "--fallback", ""});
    const Ran ran = run(whole);
    CHECK(ran.status == 1);
    CHECK(has(ran.err, "“" + file + "” was not"));
  }
}

TEST_CASE("what a command cannot do without is asked for as what was not understood") {
  for (const std::vector<std::string>& words : {std::vector<std::string>{"hear"},
                                                {"hear", "file", "--no-more"},
                                                {"tell"},
                                                {"pack"},
                                                {"mend"},
                                                {"unpack", "file"},
                                                {"play", "file"},
                                                {"photo", "file", "--of", "pan"}}) {
    CAPTURE(words[0]);
    CHECK(run(words).status == 2);
  }
}

TEST_CASE("a script played twice into one studio is refused, and nothing is written") {
  const Studio s;
  REQUIRE(s.play(small_batch).status == 0);
  const auto before = s.files();
  const Ran again = s.play(small_batch);
  CHECK(again.status == 1);
  CHECK(has(again.err, "in this studio already"));
  CHECK(s.files() == before);
}

TEST_CASE("an output that takes no more is an exit status") {
  std::ostringstream out, err;
  out.setstate(std::ios::badbit);
  CHECK(commands::run({"help"}, out, err) == 1);
  CHECK(has(err.str(), "the output takes no more"));
}

TEST_CASE("text that would turn a terminal's line round is shown as question marks") {
  const Studio s;
  rig::put(s.sessions / "a.jsonl",
           bytes_of({{"", began()},
                     {"7f3a91c2", session::Opened{"a\u202Eb\u2066c\u061Cd"}},
                     {"", session::Left{}}}));
  CHECK(has(s.read({"list"}).out, "a?b?c?d"));
}

}
