#include "window/sound.hpp"

#include <AL/al.h>
#include <AL/alc.h>

#include <array>
#include <condition_variable>
#include <cstdlib>
#include <deque>
#include <filesystem>
#include <mutex>
#include <thread>

namespace window {

namespace {

// OpenAL Soft may speak on stderr of what it tries; ALSA's library speaks where there is no card,
// and then only a sound server could play.
void ask_for_quiet() {
  ::setenv("ALSOFT_LOGLEVEL", "0", 0);
  std::error_code ignored;
  if (!std::filesystem::exists("/dev/snd", ignored))
    ::setenv("ALSOFT_DRIVERS", "pipewire,pulse", 0);
}

// A device with a handful of voices: the oldest gives way.
class Device {
public:
  Device() : device_(alcOpenDevice(nullptr)) {
    if (!device_) return;
    context_ = alcCreateContext(device_, nullptr);
    if (!context_ || !alcMakeContextCurrent(context_)) return;
    alGenSources(static_cast<ALsizei>(voices_.size()), voices_.data());
    alGenBuffers(static_cast<ALsizei>(buffers_.size()), buffers_.data());
    works_ = alGetError() == AL_NO_ERROR;
  }
  ~Device() {
    if (works_) {
      alDeleteSources(static_cast<ALsizei>(voices_.size()), voices_.data());
      alDeleteBuffers(static_cast<ALsizei>(buffers_.size()), buffers_.data());
    }
    alcMakeContextCurrent(nullptr);
    if (context_) alcDestroyContext(context_);
    if (device_) alcCloseDevice(device_);
  }
  Device(const Device&) = delete;
  Device& operator=(const Device&) = delete;

  bool works() const { return works_; }

  void play(const Tone& tone) {
    const auto samples = wave(tone);
    const ALuint voice = voices_[next_], buffer = buffers_[next_];
    next_ = (next_ + 1) % voices_.size();
    alSourceStop(voice);
    alSourcei(voice, AL_BUFFER, 0);
    alBufferData(buffer, AL_FORMAT_MONO16, samples.data(),
                 static_cast<ALsizei>(samples.size() * sizeof samples[0]), samples_per_s);
    alSourcei(voice, AL_BUFFER, static_cast<ALint>(buffer));
    alSourcePlay(voice);
  }

private:
  ALCdevice* device_ = nullptr;
  ALCcontext* context_ = nullptr;
  std::array<ALuint, 6> voices_{}, buffers_{};
  std::size_t next_ = 0;
  bool works_ = false;
};

}

struct Sound::Player {
  std::mutex mutex;
  std::condition_variable changed;
  std::deque<Tone> waiting;
  bool ready = false, ends = false;
  std::thread thread{[this] { run(); }};

  // Everything that may wait for a sound server happens here.
  void run() {
    Device device;
    if (!device.works()) return;
    std::unique_lock lock(mutex);
    ready = true;
    while (true) {
      changed.wait(lock, [&] { return ends || !waiting.empty(); });
      if (ends) return;
      const Tone tone = waiting.front();
      waiting.pop_front();
      lock.unlock();
      device.play(tone);
      lock.lock();
    }
  }
};

Sound::Sound() {
  ask_for_quiet();
  player_ = std::make_unique<Player>();
}

Sound::~Sound() {
  {
    const std::lock_guard lock(player_->mutex);
    player_->ends = true;
  }
  player_->changed.notify_one();
  player_->thread.join();
}

void Sound::play(const Tone& tone) {
  const std::lock_guard lock(player_->mutex);
  if (!player_->ready) return;
  player_->waiting.push_back(tone);
  player_->changed.notify_one();
}

}
