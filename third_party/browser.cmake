if(NOT SLABSIDE_PAGE_FLAGS)
  message(FATAL_ERROR "${CMAKE_BINARY_DIR} was set up without third_party/emscripten.cmake, which has the "
                      "flags that the page ships with. Remove it, and set it up with "
                      "--toolchain third_party/emscripten.cmake")
endif()

# What the browser's program leans on. Debian's emscripten must not see the host's headers, so those
# that are headers and nothing else get a folder of their own.
set(header_folder ${CMAKE_CURRENT_BINARY_DIR}/headers)
file(MAKE_DIRECTORY ${header_folder})
function(third_party_headers target library)
  third_party_find(SLABSIDE_HEADERS_${library} ${library} PATHS /usr/include)
  file(CREATE_LINK ${SLABSIDE_HEADERS_${library}} ${header_folder}/${library} SYMBOLIC)
  string(MAKE_C_IDENTIFIER headers_${library} plain)
  add_library(${plain} INTERFACE)
  add_library(${target} ALIAS ${plain})
  target_include_directories(${plain} SYSTEM INTERFACE ${header_folder})
endfunction()
third_party_headers(tl::expected tl)
third_party_headers(nlohmann_json::nlohmann_json nlohmann)
third_party_headers(doctest::doctest doctest)
third_party_headers(third_party::eigen eigen3)
target_include_directories(headers_eigen3 SYSTEM INTERFACE ${header_folder}/eigen3)
target_compile_definitions(headers_eigen3 INTERFACE EIGEN_MPL2_ONLY)
if(NOT SLABSIDE_WINDOW)
  return()
endif()
third_party_headers(third_party::stb stb)
# Of node's, for the page to fetch: the code on labels.
find_program(SLABSIDE_TERSER terser PATHS /usr/bin NO_DEFAULT_PATH)
if(NOT SLABSIDE_TERSER)
  message(FATAL_ERROR "terser is missing, which makes the page's scripts short. third_party/install brings it")
endif()
third_party_find(SLABSIDE_QRCODE_JS qrcode.js PATHS /usr/share/nodejs/qrcode-generator)
include(fonts.cmake)
include(imgui.cmake)

# Pointers, keys and the canvas are ours; ImGui draws through WebGL 2.
add_library(third_party_imgui STATIC
  ${imgui_folder}/imgui.cpp ${imgui_folder}/imgui_draw.cpp ${imgui_folder}/imgui_tables.cpp
  ${imgui_folder}/imgui_widgets.cpp ${imgui_folder}/backends/imgui_impl_opengl3.cpp)
add_library(third_party::imgui ALIAS third_party_imgui)
target_include_directories(third_party_imgui SYSTEM PUBLIC ${imgui_folder} ${imgui_folder}/backends)
target_compile_definitions(third_party_imgui PUBLIC IMGUI_DISABLE_OBSOLETE_FUNCTIONS IMGUI_USE_WCHAR32
                                                    IMGUI_DISABLE_FILE_FUNCTIONS
                                             PRIVATE IMGUI_IMPL_OPENGL_ES3)
