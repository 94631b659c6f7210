#include "studio/jpg_tags.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>

namespace studio {

namespace {

constexpr std::string_view exif_start("Exif\0\0", 6);
constexpr std::string_view profile_start("ICC_PROFILE\0", 12);

// 0 beyond the end.
std::uint32_t byte(std::string_view bytes, std::size_t at) {
  return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
}

struct Numbers { // in the order that a TIFF header names
  std::string_view bytes;
  bool low_first = false;

  std::uint32_t two(std::size_t at) const {
    const std::uint32_t a = byte(bytes, at), b = byte(bytes, at + 1);
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
  const std::uint32_t number = byte(segment, profile_start.size());
  reading.parts_in_all = byte(segment, profile_start.size() + 1);
  reading.parts[number] = std::string(segment.substr(profile_start.size() + 2));
}

// Tables of 64 steps, of one byte or two each; the first is that of the middle.
void take_steps(std::string_view segment, Reading& reading) {
  for (std::size_t at = 0; at < segment.size();) {
    const std::uint32_t head = byte(segment, at);
    const bool wide = head >> 4 != 0;
    const std::uint32_t first =
        wide ? byte(segment, at + 1) << 8 | byte(segment, at + 2) : byte(segment, at + 1);
    if ((head & 15) < reading.first_step.size()) reading.first_step[head & 15] = first / 8.0;
    at += 1 + (wide ? 128 : 64);
  }
}

void take_frame(std::string_view segment, Reading& reading) {
  const std::uint32_t count = byte(segment, 5);
  reading.tags.components = static_cast<int>(count);
  for (std::size_t i = 0; i < std::min<std::size_t>(count, reading.table_of.size()); ++i)
    reading.table_of[i] = std::min<std::size_t>(byte(segment, 8 + 3 * i), 3);
}

bool is_frame(std::uint32_t marker) {
  return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

void take_segment(std::uint32_t marker, std::string_view segment, Reading& reading) {
  const auto begins = [&](std::string_view start) {
    return segment.substr(0, start.size()) == start;
  };
  if (marker == 0xe1 && begins(exif_start))
    reading.tags.orientation = orientation_of(segment.substr(exif_start.size()));
  if (marker == 0xe2 && begins(profile_start)) take_profile(segment, reading);
  if (marker == 0xdb) take_steps(segment, reading);
  if (is_frame(marker) && reading.tags.components == 0) take_frame(segment, reading);
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
  for (std::size_t at = 2; at + 4 <= bytes.size() && byte(bytes, at) == 0xff;) {
    const std::uint32_t marker = byte(bytes, at + 1);
    if (marker == 0xff) { // any number of them may stand before a marker
      ++at;
      continue;
    }
    if (marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7)) { // without a length
      at += 2;
      continue;
    }
    if (marker == 0xda || marker == 0xd9) break;
    const std::size_t length = byte(bytes, at + 2) << 8 | byte(bytes, at + 3);
    if (length < 2) break;
    take_segment(marker, bytes.substr(at + 4, length - 2), reading);
    at += 2 + length;
  }
  put_together(reading);
  const auto& step = reading.first_step;
  reading.tags.light_step = step[reading.table_of[0]];
  if (reading.tags.components == 3)
    reading.tags.colour_step = std::max(step[reading.table_of[1]], step[reading.table_of[2]]);
  return reading.tags;
}

}
