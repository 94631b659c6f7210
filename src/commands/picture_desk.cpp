#include "commands/picture_desk.hpp"

#include "commands/picture_answers.hpp"
#include "commands/picture_images.hpp"
#include "studio/worker.hpp"

#include <algorithm>
#include <deque>
#include <mutex>
#include <utility>

namespace commands {

namespace {

class Desk {
public:
  Desk(PictureHome home, std::function<void()> wake)
      : home_(std::move(home)), wake_(std::move(wake)) {}
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;

  void ask(bench::PhotoWanted wanted) {
    {
      const std::lock_guard lock(mutex_);
      ++answering_;
    }
    worker_.give([this, w = std::move(wanted)] { say(answer(home_, w)); });
  }

  void want(std::vector<WantedImage> images) {
    {
      const std::lock_guard lock(mutex_);
      std::erase_if(images, [&](const WantedImage& i) { return i == making_; });
      std::stable_partition(images.begin(), images.end(), [](const auto& i) { return i.large; });
      wanted_.assign(images.begin(), images.end());
      if (wanted_.empty() || std::exchange(drawing_, true)) return;
    }
    worker_.give([this] { draw_next(); });
  }

  std::optional<bench::Input> poll() {
    const std::lock_guard lock(mutex_);
    if (news_.empty()) return std::nullopt;
    std::optional<bench::Input> first = std::move(news_.front());
    news_.pop_front();
    return first;
  }
  std::vector<DrawnImage> take_images() {
    const std::lock_guard lock(mutex_);
    return std::exchange(drawn_, {});
  }
  bool is_busy() {
    const std::lock_guard lock(mutex_);
    return answering_ > 0 || !news_.empty();
  }

private:
  void say(bench::Input input) {
    {
      const std::lock_guard lock(mutex_);
      --answering_;
      news_.push_back(std::move(input));
    }
    if (wake_) wake_();
  }

  // One, and then behind what was asked meanwhile the next.
  void draw_next() {
    {
      const std::lock_guard lock(mutex_);
      if (wanted_.empty()) {
        drawing_ = false;
        return;
      }
      making_ = wanted_.front();
      wanted_.pop_front();
    }
    auto image = make_image(home_, making_);
    {
      const std::lock_guard lock(mutex_);
      if (image)
        drawn_.push_back(*std::move(image));
      else
        news_.push_back(
            bench::ImageSeen{making_.image, tl::make_unexpected(std::move(image.error()))});
      making_ = {};
    }
    if (wake_) wake_();
    worker_.give([this] { draw_next(); });
  }

  const PictureHome home_;
  const std::function<void()> wake_;
  std::mutex mutex_; // over all of the next
  std::deque<bench::Input> news_;
  std::deque<WantedImage> wanted_;
  std::vector<DrawnImage> drawn_;
  WantedImage making_;
  int answering_ = 0;
  bool drawing_ = false;
  studio::Worker worker_; // last: it ends before what its jobs look at
};

}

Pictures picture_desk(PictureHome home, std::function<void()> wake) {
  const std::string folder = home.folder;
  const auto desk = std::make_shared<Desk>(std::move(home), std::move(wake));
  return {folder,
          [desk](bench::PhotoWanted wanted) { desk->ask(std::move(wanted)); },
          [desk] { return desk->poll(); },
          [desk] { return desk->is_busy(); },
          [desk](std::vector<WantedImage> images) { desk->want(std::move(images)); },
          [desk] { return desk->take_images(); }};
}

}
