// What a page is asked and answers later, once, by the id that the question was given.
#pragma once

#include <functional>
#include <map>
#include <utility>

namespace disk {

template <class Answer>
class BrowserQuestions {
public:
  using Then = std::function<void(Answer)>;

  // Ids begin at 1.
  int ask(Then then) {
    under_way_.emplace(++last_, std::move(then));
    return last_;
  }
  void drop(int id) { under_way_.erase(id); }
  // Nothing happens where who asked is gone.
  void answer(int id, Answer answer) {
    const auto asked = under_way_.find(id);
    if (asked == under_way_.end()) return;
    const Then then = std::move(asked->second);
    under_way_.erase(asked);
    then(std::move(answer));
  }

private:
  std::map<int, Then> under_way_;
  int last_ = 0;
};

}
