# Turns a text file into a .cpp that holds its bytes, so that the program needs no file beside it:
#   cmake -DIN=assets/pigments.json -DOUT=pigments_json.cpp -DNAME=pigments_json -P embed.cmake
file(READ ${IN} bytes)
file(WRITE ${OUT} "#include <string_view>
namespace paint {
extern const std::string_view ${NAME};
const std::string_view ${NAME} = R\"bytes(${bytes})bytes\";
}
")
