#include "screens/face_files.hpp"

#include "screens/measure.hpp"
#include "screens/own_faces.hpp"

#include <array>
#include <fstream>

namespace screens {

namespace {

constexpr std::array<std::array<const char*, ranks>, 2> paths{
    {{SLABSIDE_FONT_REGULAR, SLABSIDE_FONT_OTHER_REGULAR, SLABSIDE_FONT_EAST_ASIAN},
     {SLABSIDE_FONT_BOLD, SLABSIDE_FONT_OTHER_BOLD, SLABSIDE_FONT_EAST_ASIAN}}};
// Where the build found none of that rank, one may have come to the system since.
constexpr std::array<const char*, 2> usual_east_asian{
    "/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf",
    "/usr/share/fonts/opentype/noto/NotoSansCJK-Regular.ttc"};

std::string& own_folder() {
  static std::string folder;
  return folder;
}

// The first that is there counts.
std::vector<std::string> places(bool bold, int rank) {
  const std::string usual = place_of_face(bold, rank);
  std::vector<std::string> all{usual};
  if (!own_folder().empty())
    all.insert(all.begin(), own_folder() + '/' + usual.substr(usual.find_last_of('/') + 1));
  if (rank == ranks - 1) all.insert(all.end(), usual_east_asian.begin(), usual_east_asian.end());
  return all;
}

}

void look_for_faces_in(const std::string& folder) { own_folder() = folder; }

std::vector<unsigned char> bytes_of_face(bool bold, int rank) {
  std::ifstream file;
  for (const std::string& place : places(bold, rank))
    if (file.open(place, std::ios::binary | std::ios::ate); file) break;
  if (!file) return {};
  std::vector<unsigned char> bytes(static_cast<std::size_t>(file.tellg()));
  file.seekg(0);
  file.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
  return file ? bytes : std::vector<unsigned char>();
}

std::string place_of_face(bool bold, int rank) {
  return paths[static_cast<std::size_t>(bold)][static_cast<std::size_t>(rank)];
}

bool comes_later(int) { return false; }

}
