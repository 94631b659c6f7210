#include "commands/browser_paper_desk.hpp"

#include "commands/browser_text.hpp"
#include "words/commands_says.hpp"

#include <emscripten/emscripten.h>

#include <deque>
#include <utility>

// Begun within the tap itself, as some browsers want it; answered later by slabside_paper_went.
extern "C" void slabside_put_on_paper(const char* stem, const char* ending, const char* bytes,
                                      std::size_t count); // browser_paper_desk.js

namespace commands {

namespace {

using Say = words::CommandsSay;

struct PaperNews {
  std::function<void()> wake = {};
  std::deque<bench::Input> news = {};
  int under_way = 0;
};

PaperNews& paper_news() {
  static PaperNews one;
  return one;
}

void put_on_paper(const HandedFile& file) {
  ++paper_news().under_way;
  slabside_put_on_paper(file.stem.c_str(), file.ending.c_str(), file.bytes.data(),
                        file.bytes.size());
}

std::optional<bench::Input> next_paper() {
  if (paper_news().news.empty()) return std::nullopt;
  std::optional<bench::Input> first = std::move(paper_news().news.front());
  paper_news().news.pop_front();
  return first;
}

bench::PaperWritten paper_outcome(const std::string& name, bool printed, const std::string& why) {
  if (!why.empty())
    return {words::failure(printed ? Say::paper_not_printed : Say::paper_not_saved, {name, why})};
  return {name, printed ? bench::PaperWay::to_print : bench::PaperWay::saved};
}

}

Papers browser_paper_desk(std::function<void()> wake) {
  paper_news().wake = std::move(wake);
  Papers papers;
  papers.write = put_on_paper;
  papers.poll = next_paper;
  papers.is_busy = [] { return paper_news().under_way > 0 || !paper_news().news.empty(); };
  papers.in_browser = true;
  return papers;
}

}

// `why`: the browser's own words of what went wrong; empty: nothing did.
extern "C" EMSCRIPTEN_KEEPALIVE void slabside_paper_went(char* name, int printed, char* why) {
  commands::PaperNews& papers = commands::paper_news();
  --papers.under_way;
  const std::string of = commands::taken(name);
  papers.news.push_back(commands::paper_outcome(of, printed != 0, commands::taken(why)));
  if (papers.wake) papers.wake();
}
