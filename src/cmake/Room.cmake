# add_room(NAME [USES room...] [NEEDS imported-target...])
#
# One folder of src/ is one library. A room sees only the headers of the rooms it USES,
# because each room's headers are reachable through an include folder of its own: a wrong
# include does not compile. Files named main*.cpp are executables' and stay outside.
function(add_room name)
  cmake_parse_arguments(ROOM "" "" "USES;NEEDS" ${ARGN})
  set(folder ${PROJECT_SOURCE_DIR}/src/${name})
  set(view ${PROJECT_BINARY_DIR}/include/${name})
  file(MAKE_DIRECTORY ${view})
  file(CREATE_LINK ${folder} ${view}/${name} SYMBOLIC)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${folder}/*.cpp)
  list(FILTER sources EXCLUDE REGEX "/main[a-z_]*\\.cpp$")
  if(NOT sources)  # while the house is being built
    file(WRITE ${PROJECT_BINARY_DIR}/empty_${name}.cpp "")
    set(sources ${PROJECT_BINARY_DIR}/empty_${name}.cpp)
  endif()
  file(GLOB_RECURSE headers RELATIVE ${folder} CONFIGURE_DEPENDS ${folder}/*.hpp)
  list(TRANSFORM headers PREPEND ${view}/${name}/)
  add_library(fw_${name} STATIC ${sources})
  add_library(fw::${name} ALIAS fw_${name})
  target_sources(fw_${name} PUBLIC FILE_SET HEADERS BASE_DIRS ${view} FILES ${headers})
  foreach(room IN LISTS ROOM_USES)
    target_link_libraries(fw_${name} PUBLIC fw::${room})
  endforeach()
  target_link_libraries(fw_${name} PUBLIC ${ROOM_NEEDS} PRIVATE fw_warnings)
endfunction()
