#include "studio/understand.hpp"

#include "studio/worker.hpp"

namespace studio {

std::vector<session::File> understand(const std::vector<disk::FileBytes>& files,
                                      const std::string& prefix) {
  constexpr std::size_t few = 8; // are read before another thread has begun
  std::vector<session::File> read(files.size());
  const auto each_second = [&](std::size_t from) {
    for (std::size_t i = from; i < files.size(); i += 2)
      read[i] = session::read_file(prefix + files[i].name, files[i].bytes);
  };
  if (files.size() < few) {
    each_second(0);
    each_second(1);
  } else {
    do_both([&] { each_second(0); }, [&] { each_second(1); });
  }
  return read;
}

}
