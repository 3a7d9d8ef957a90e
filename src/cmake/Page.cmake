# The page: the program as wasm and JavaScript, put into one HTML file, and into a folder for a web server.
add_executable(foldwright_page ${PROJECT_SOURCE_DIR}/src/web/main_page.cpp)
target_link_libraries(foldwright_page PRIVATE fw::web fw_warnings)
set(web_room ${PROJECT_SOURCE_DIR}/src/web)
# Each function that the page calls, by its name in main_page.cpp.
file(STRINGS ${web_room}/main_page.cpp page_calls REGEX "^[a-z].* fw_[a-z_]+\\(")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${web_room}/main_page.cpp)
list(TRANSFORM page_calls REPLACE "^.* (fw_[a-z_]+)\\(.*$" "_\\1")
list(JOIN page_calls "," page_calls)
set_target_properties(foldwright_page PROPERTIES LINK_DEPENDS ${web_room}/library.js)
target_link_options(foldwright_page PRIVATE
  -sALLOW_MEMORY_GROWTH -sMIN_WEBGL_VERSION=2 -sMAX_WEBGL_VERSION=2 -sFILESYSTEM=0 -sENVIRONMENT=web -sMALLOC=emmalloc
  -sTOTAL_STACK=1048576 -sMODULARIZE -sEXPORT_NAME=makeFoldwright -sINVOKE_RUN=0
  "-sEXPORTED_FUNCTIONS=_main,_malloc,_free,${page_calls}" "-sEXPORTED_RUNTIME_METHODS=ccall,UTF8ToString"
  --js-library ${web_room}/library.js)
# Says what the rooms say, in node; the desktop's build has the same program, and both have to say the same.
add_executable(foldwright_said EXCLUDE_FROM_ALL ${web_room}/main_said.cpp)
target_link_libraries(foldwright_said PRIVATE fw::web fw_warnings)
target_link_options(foldwright_said PRIVATE -sALLOW_MEMORY_GROWTH -sENVIRONMENT=node -sTOTAL_STACK=1048576)
set(page ${PROJECT_BINARY_DIR}/foldwright.html)
set(hosted ${PROJECT_BINARY_DIR}/foldwright)
file(GLOB page_sources CONFIGURE_DEPENDS ${web_room}/*.js ${web_room}/*.css ${web_room}/*.html ${web_room}/*.webmanifest)
add_custom_command(
  OUTPUT ${page} ${hosted}/index.html
  COMMAND Python3::Interpreter ${PROJECT_SOURCE_DIR}/src/cmake/page.py ${web_room} $<TARGET_FILE:foldwright_page> ${page}
    ${hosted}
  DEPENDS foldwright_page ${page_sources} ${PROJECT_SOURCE_DIR}/src/cmake/page.py
  COMMENT "Putting the page together"
  VERBATIM)
add_custom_target(page ALL DEPENDS ${page})
