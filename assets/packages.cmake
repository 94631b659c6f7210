set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME slabside)
set(CPACK_PACKAGE_VENDOR "The Slabside authors")
set(CPACK_PACKAGE_CONTACT "The Slabside authors <slabside@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "tablet beside the slab for makers of watercolour paint")
set(CPACK_PACKAGE_DESCRIPTION
"Slabside stands on a tablet beside the glass slab on which somebody makes
watercolour paint of pigment, gum binder and water. One tap counts one drop,
one tap notes how the paint feels, one pad times the mulling.
.
It knows where the paint stands, says what may safely be added next, learns
how much binder each pigment wants, and keeps every batch so that it can be
made again: as plain text, every tap forced to the disk before it is called
saved, and nothing ever overwritten.")
set(CPACK_STRIP_FILES TRUE)
set(CPACK_PRE_BUILD_SCRIPTS ${CMAKE_CURRENT_SOURCE_DIR}/readable.cmake)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Beside the libraries it is linked with: the fonts, the drawing that GLFW and EGL load when they
# start, and the folders that its icons lie in.
set(CPACK_DEBIAN_PACKAGE_DEPENDS
    "fonts-b612, fonts-dejavu-core, hicolor-icon-theme, libgl1, libgl1-mesa-dri")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "shared-mime-info")
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "fonts-droid-fallback, xwayland")

# One moment for everything in a package, that of the changelog: packed twice it is the same file.
file(STRINGS debian/changelog released LIMIT_COUNT 1 REGEX "^ -- ")
string(REGEX REPLACE "^.*>  " "" released "${released}")
execute_process(COMMAND date -u -d "${released}" +%s OUTPUT_VARIABLE released
                OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(CONFIGURE OUTPUT released.cmake @ONLY CONTENT [[
if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})
  set(ENV{SOURCE_DATE_EPOCH} @released@)
endif()
]])
set(CPACK_PROJECT_CONFIG_FILE ${CMAKE_CURRENT_BINARY_DIR}/released.cmake)

set(CPACK_SOURCE_GENERATOR TXZ)
set(CPACK_SOURCE_PACKAGE_FILE_NAME slabside-${PROJECT_VERSION})
set(CPACK_VERBATIM_VARIABLES TRUE)
set(CPACK_SOURCE_IGNORE_FILES "^${PROJECT_SOURCE_DIR}/(build[^/]*|\\.git|\\.cache)(/|$)" "/__pycache__/")
include(CPack)
