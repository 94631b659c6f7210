#include "screens/browser_face_files.hpp"

#include "screens/face_files.hpp"
#include "screens/measure.hpp"

#include <emscripten/emscripten.h>

#include <cstdlib>

extern "C" { // browser_face_files.js
unsigned char* slabside_face(int bold, int rank, int* count);
void slabside_fetch_faces();

EMSCRIPTEN_KEEPALIVE void slabside_faces_came() { screens::look_again_for_faces(); }
}

namespace screens {

std::vector<unsigned char> bytes_of_face(bool bold, int rank) {
  int count = 0;
  unsigned char* bytes = slabside_face(bold, rank, &count);
  std::vector<unsigned char> out(bytes, bytes + count);
  std::free(bytes);
  return out;
}

std::string place_of_face(bool bold, int rank) {
  return std::string(rank == 0 ? "B612" : "DejaVu Sans") + (bold ? ", bold" : "");
}

bool comes_later(int rank) { return rank > 0; }

void fetch_faces() { slabside_fetch_faces(); }

}
