#include "studio/jpg_tags.hpp"

#include "studio/jpg_segments.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>

namespace studio {

namespace {

constexpr std::string_view exif_start("Exif\0\0", 6);
constexpr std::string_view profile_start("ICC_PROFILE\0", 12);

struct Numbers { // in the order that a TIFF header names
  std::string_view bytes;
  bool low_first = false;

  std::uint32_t two(std::size_t at) const {
    const std::uint32_t a = byte_at(bytes, at), b = byte_at(bytes, at + 1);
    return low_first ? b << 8 | a : a << 8 | b;
  }
  std::uint32_t four(std::size_t at) const {
    return low_first ? two(at + 2) << 16 | two(at) : two(at) << 16 | two(at + 2);
  }
};

struct Reading {
  JpgTags tags;
  std::array<double, 4> first_step{};         // of each table
  std::array<std::size_t, 4> table_of{};      // of each component
  std::map<std::uint32_t, std::string> parts; // of the profile, by number
  std::uint32_t parts_in_all = 0;
};

void take_profile(std::string_view segment, Reading& reading) {
  if (segment.size() < profile_start.size() + 2) return;
  const std::uint32_t number = byte_at(segment, profile_start.size());
  reading.parts_in_all = byte_at(segment, profile_start.size() + 1);
  reading.parts[number] = std::string(segment.substr(profile_start.size() + 2));
}

// Tables of 64 steps, of one byte or two each; the first is that of the middle.
void take_steps(std::string_view segment, Reading& reading) {
  for (std::size_t at = 0; at < segment.size();) {
    const std::uint32_t head = byte_at(segment, at);
    const bool wide = head >> 4 != 0;
    const std::uint32_t first =
        wide ? byte_at(segment, at + 1) << 8 | byte_at(segment, at + 2) : byte_at(segment, at + 1);
    if ((head & 15) < reading.first_step.size()) reading.first_step[head & 15] = first / 8.0;
    at += 1 + (wide ? 128 : 64);
  }
}

void take_frame(std::string_view segment, Reading& reading) {
  const std::uint32_t count = byte_at(segment, 5);
  reading.tags.components = static_cast<int>(count);
  for (std::size_t i = 0; i < std::min<std::size_t>(count, reading.table_of.size()); ++i)
    reading.table_of[i] = std::min<std::size_t>(byte_at(segment, 8 + 3 * i), 3);
}

void take_segment(std::uint32_t marker, std::string_view segment, Reading& reading) {
  const auto begins = [&](std::string_view start) {
    return segment.substr(0, start.size()) == start;
  };
  if (marker == 0xe1 && begins(exif_start))
    reading.tags.orientation = orientation_of(segment.substr(exif_start.size()));
  if (marker == 0xe2 && begins(profile_start)) take_profile(segment, reading);
  if (marker == 0xdb) take_steps(segment, reading);
  if (is_jpg_frame(marker) && reading.tags.components == 0) take_frame(segment, reading);
}

void put_together(Reading& reading) {
  std::string all;
  for (std::uint32_t i = 1; i <= reading.parts_in_all; ++i) {
    const auto part = reading.parts.find(i);
    if (part == reading.parts.end()) return;
    all += part->second;
  }
  reading.tags.profile = std::move(all);
}

}

int orientation_of(std::string_view exif) {
  const Numbers numbers{exif, exif.substr(0, 2) == "II"};
  const bool ordered = numbers.low_first || exif.substr(0, 2) == "MM";
  if (!ordered || numbers.two(2) != 42) return 1;
  const std::size_t folder = numbers.four(4);
  if (folder + 2 > exif.size()) return 1;
  const std::size_t count = numbers.two(folder);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t at = folder + 2 + 12 * i;
    if (at + 12 > exif.size()) break;
    if (numbers.two(at) != 0x0112) continue;
    const std::uint32_t value = numbers.two(at + 8);
    return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
  }
  return 1;
}

JpgTags jpg_tags(std::string_view bytes) {
  Reading reading;
  jpg_segments(bytes, [&](std::uint32_t marker, std::string_view from) {
    if (marker == jpg_scan || marker == jpg_end) return false;
    const std::size_t length = byte_at(from, 0) << 8 | byte_at(from, 1);
    take_segment(marker, from.substr(2, length - 2), reading);
    return true;
  });
  put_together(reading);
  const auto& step = reading.first_step;
  reading.tags.light_step = step[reading.table_of[0]];
  if (reading.tags.components == 3)
    reading.tags.colour_step = std::max(step[reading.table_of[1]], step[reading.table_of[2]]);
  return reading.tags;
}

}
