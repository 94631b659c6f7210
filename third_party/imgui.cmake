# Dear ImGui: the sources in SLABSIDE_IMGUI_DIR, or else those the script has or brings.
set(SLABSIDE_IMGUI_DIR "" CACHE PATH "sources of Dear ImGui; empty: third_party/imgui brings them")
set(imgui_folder ${SLABSIDE_IMGUI_DIR})
if(NOT imgui_folder)
  message(STATUS "Dear ImGui's sources come from third_party/imgui")
  execute_process(COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/imgui
                  OUTPUT_VARIABLE imgui_folder OUTPUT_STRIP_TRAILING_WHITESPACE
                  RESULT_VARIABLE imgui_failed)
  if(imgui_failed)
    message(FATAL_ERROR "third_party/imgui could not bring Dear ImGui; with sources from elsewhere "
                        "give -DSLABSIDE_IMGUI_DIR=...")
  endif()
endif()
if(NOT EXISTS ${imgui_folder}/imgui.h)
  message(FATAL_ERROR "No imgui.h in ${imgui_folder}")
endif()
# From 1.87 on input is a queue; before, two taps in one poll became one.
file(STRINGS ${imgui_folder}/imgui.h imgui_version REGEX "define IMGUI_VERSION_NUM")
string(REGEX MATCH "[0-9]+" imgui_version "${imgui_version}")
if(imgui_version LESS 18700)
  message(FATAL_ERROR "Dear ImGui in ${imgui_folder} is older than 1.87 and loses quick taps")
endif()
