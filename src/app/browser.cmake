# The page: a folder of plain files that any web server may serve, in web/ of the build folder. Its
# parts are linked beside it, and lie there in a folder that is named by what is in it.
set(web ${CMAKE_BINARY_DIR}/web)
set(parts ${CMAKE_CURRENT_BINARY_DIR}/page)
set(page ${PROJECT_SOURCE_DIR}/assets/browser)

# The worker that learns runs it too, for what is in both would else be fetched twice.
add_executable(slabside app/browser_main.cpp app/browser_learn_main.cpp)
target_link_libraries(slabside PRIVATE app)
set_target_properties(slabside PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${parts})
foreach(library commands/browser_clock.js commands/browser_paper_desk.js
                commands/browser_picture_desk.js commands/browser_told_desk.js disk/browser_store.js paper/browser_qr.js
                screens/browser_face_files.js
                studio/browser_learner.js window/browser_page.js)
  target_link_options(slabside PRIVATE "SHELL:--js-library ${CMAKE_CURRENT_SOURCE_DIR}/${library}")
  list(APPEND libraries ${CMAKE_CURRENT_SOURCE_DIR}/${library})
endforeach()
# page.js guards every way into the program by its name, which emscripten shortens where it makes small, unless there is
# its library that looks for names.
target_link_options(slabside PRIVATE -lexports.js
  -sMIN_WEBGL_VERSION=2 -sMAX_WEBGL_VERSION=2 -sALLOW_MEMORY_GROWTH=1 -sENVIRONMENT=web,worker
  -sEXPORTED_FUNCTIONS=_main,_malloc,_free -sFILESYSTEM=0)
# Of a function that is called from one place alone the linker would make a part of that place. Left as it is,
# it is like others of its kind, which the compression on the way knows: 2 % less to fetch.
target_link_options(slabside PRIVATE -Oz -sBINARYEN_EXTRA_PASSES=--one-caller-inline-max-function-size=2)

set_target_properties(slabside PROPERTIES LINK_DEPENDS "${libraries}")

# The page's own words, which node says while this is built.
add_executable(page_words app/browser_words_main.cpp)
target_link_libraries(page_words PRIVATE words)
target_link_options(page_words PRIVATE -sENVIRONMENT=node)
set(page_words ${CMAKE_CURRENT_BINARY_DIR}/page_words.cmake)
add_custom_command(OUTPUT ${page_words}
  COMMAND ${NODE_JS_EXECUTABLE} --no-experimental-fetch $<TARGET_FILE:page_words> > ${page_words}
  DEPENDS page_words)

# The faces that everybody fetches have the letters of all sentences and of most names (letters.txt), and
# no others: two fifths of the bytes. What ImGui draws goes by no hints and no kerning.
set(letters ${CMAKE_CURRENT_BINARY_DIR}/letters.txt)
add_custom_command(OUTPUT ${letters}
  COMMAND ${SLABSIDE_PYTHON} -B ${sentences} letters ${letters}
  COMMAND ${CMAKE_COMMAND} -E cat ${page}/letters.txt >> ${letters}
  DEPENDS ${page}/letters.txt ${sentences} ${english} ${languages} ${pigments}
  VERBATIM)
foreach(weight REGULAR BOLD)
  set(face ${CMAKE_CURRENT_BINARY_DIR}/face_${weight}.otf)
  add_custom_command(OUTPUT ${face}
    COMMAND ${SLABSIDE_PYTHON} -m fontTools.subset ${SLABSIDE_FONT_${weight}} --text-file=${letters}
            --no-hinting --desubroutinize --layout-features= --drop-tables+=GPOS --name-IDs=*
            --output-file=${face}
    DEPENDS ${letters} ${SLABSIDE_FONT_${weight}}
    VERBATIM)
  list(APPEND faces ${face})
endforeach()
list(APPEND faces ${SLABSIDE_FONT_OTHER_REGULAR} ${SLABSIDE_FONT_OTHER_BOLD})

file(GLOB page_files CONFIGURE_DEPENDS ${page}/*)
set(finish ${CMAKE_CURRENT_SOURCE_DIR}/app/browser_page.cmake)
set(shorten "${CMAKE_COMMAND};-E;env;NODE_PATH=$ENV{NODE_PATH};${SLABSIDE_TERSER};--compress;--mangle")
add_custom_command(OUTPUT ${web}/worker.js
  COMMAND ${CMAKE_COMMAND} -DPAGE=${page} -DPARTS=${parts} -DWEB=${web} -DWORDS=${page_words}
          "-DFACES=${faces}" -DCODES=${SLABSIDE_QRCODE_JS}
          "-DSHORTEN=${shorten}" -P ${finish}
  DEPENDS slabside ${page_words} ${page_files} ${faces} ${SLABSIDE_QRCODE_JS} ${finish}
  VERBATIM)
add_custom_target(page ALL DEPENDS ${web}/worker.js)
