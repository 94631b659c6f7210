# The tests of the pure rooms as WebAssembly, run by node: the numbers a browser computes. Debian
# brings RapidCheck and Little CMS for the computer only, so files that use them stay there.
set(CMAKE_CROSSCOMPILING_EMULATOR ${NODE_JS_EXECUTABLE} --no-experimental-fetch)

# doctest's own half is compiled there, which the headers that are read once do not hold.
set_source_files_properties(main.cpp PROPERTIES SKIP_PRECOMPILE_HEADERS ON SKIP_UNITY_BUILD_INCLUSION ON)

function(node_tests name)
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${name}/*.cpp)
  foreach(source ${sources})
    file(STRINGS ${source} needs REGEX "include.*(rapidcheck|random\.hpp|sha2|lcms2|studio/)")
    if(needs)
      list(REMOVE_ITEM sources ${source})
    endif()
  endforeach()
  add_executable(test_${name} ${sources} main.cpp)
  target_include_directories(test_${name} PRIVATE ${CMAKE_CURRENT_SOURCE_DIR})
  target_compile_definitions(test_${name} PRIVATE SLABSIDE_ROOT="${PROJECT_SOURCE_DIR}")
  target_compile_options(test_${name} PRIVATE -Wall -Wextra -Werror)
  # The rooms' objects are those of the page; the tests' own would take most of the time to build.
  target_compile_options(test_${name} PRIVATE -O0)
  if(name IN_LIST of_many_tests)
    a_dozen_at_a_time(test_${name})
  endif()
  target_precompile_headers(test_${name} PRIVATE ${common_headers} <doctest/doctest.h> ${read_once_${name}})
  # Only the linker's own passes are left out, which take long and are for size; what ships has them,
  # and a browser runs it.
  target_link_options(test_${name} PRIVATE -O1 -sENVIRONMENT=node -sNODERAWFS=1 -sEXIT_RUNTIME=1
                                           -sALLOW_MEMORY_GROWTH=1)
  target_link_libraries(test_${name} PRIVATE ${ARGN} doctest::doctest)
  add_test(NAME ${name} COMMAND test_${name})
endfunction()

node_tests(words words)
add_library(ordinal STATIC ${CMAKE_CURRENT_SOURCE_DIR}/ordinal/ordinal.cpp)
target_include_directories(ordinal PUBLIC ${CMAKE_CURRENT_SOURCE_DIR})
target_link_libraries(ordinal PUBLIC paint PRIVATE third_party::eigen)
node_tests(paint paint ordinal third_party::eigen)
node_tests(published paint ordinal nlohmann_json::nlohmann_json)
node_tests(session session)
node_tests(notes notes)
node_tests(bench bench)

# Every script of the page, as emscripten's last pass has left it: a browser that cannot parse one says
# so to nobody.
add_test(NAME page_scripts
         COMMAND sh -c "for f in \"$1\"/*.js \"$1\"/*/*.js; do \"$0\" --check \"$f\" || exit 1; done"
                 ${NODE_JS_EXECUTABLE} ${CMAKE_BINARY_DIR}/web)
