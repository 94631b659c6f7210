#include "studio/browser_answer.hpp"
#include "studio/learner.hpp"
#include "words/studio_says.hpp"

#include <emscripten/emscripten.h>

#include <cstdlib>
#include <deque>
#include <utility>

extern "C" worker_handle slabside_learner(); // browser_learner.js

namespace studio {

// The worker begins when there is first something to learn.
struct Learner::Work {
  static std::weak_ptr<Work> last; // a page has one
  std::function<void()> wake;
  std::optional<worker_handle> worker = {};
  int under_way = 0;
  std::deque<Result> results = {};

  ~Work() {
    if (worker) emscripten_destroy_worker(*worker);
  }

  static void answered(char* bytes, int size, void* given) {
    const std::unique_ptr<std::weak_ptr<Work>> of(static_cast<std::weak_ptr<Work>*>(given));
    const auto work = of->lock();
    if (!work) return;
    work->results.push_back(read_answer({bytes, static_cast<std::size_t>(size)}));
    if (work->wake) work->wake();
  }

  // Whatever it was asked is answered by that, and the next question makes a worker anew.
  void fail(const std::string& why) {
    if (worker) emscripten_destroy_worker(*std::exchange(worker, std::nullopt));
    while (static_cast<int>(results.size()) < under_way)
      results.push_back(words::failure(words::StudioSay::learner_broke, {why}));
    if (wake) wake();
  }

  static void failed(const std::string& why) {
    if (const auto work = last.lock()) work->fail(why);
  }
};

std::weak_ptr<Learner::Work> Learner::Work::last;

Learner::Learner(std::function<void()> wake) : work_(new Work{std::move(wake)}) {
  Work::last = work_;
}

void Learner::give(std::string problem) {
  if (!work_->worker) work_->worker = slabside_learner();
  ++work_->under_way;
  emscripten_call_worker(*work_->worker, "learn", problem.data(), static_cast<int>(problem.size()),
                         Work::answered, new std::weak_ptr<Work>(work_));
}

std::optional<Learner::Result> Learner::poll() {
  if (work_->results.empty()) return std::nullopt;
  Result result = std::move(work_->results.front());
  work_->results.pop_front();
  --work_->under_way;
  return result;
}

bool Learner::is_busy() const { return work_->under_way > 0; }

void Learner::failed(const std::string& why) { Work::failed(why); }

}

extern "C" EMSCRIPTEN_KEEPALIVE void slabside_learner_failed(char* why) {
  const std::string said = why;
  std::free(why);
  studio::Learner::failed(said);
}
