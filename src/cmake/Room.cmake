# Headers of the standard library and of GLM, read once for all rooms; each room still includes what it uses, which
# the check of the header sets compiles without them. Rooms that compute are optimized in debug builds as well, since
# their tests try thousands of cases, and have a set of their own.
function(add_precompiled name)
  file(WRITE ${PROJECT_BINARY_DIR}/${name}.cpp "")
  add_library(${name} OBJECT ${PROJECT_BINARY_DIR}/${name}.cpp)
  target_link_libraries(${name} PRIVATE fw_warnings)
  target_compile_options(${name} PRIVATE ${ARGN})
  target_precompile_headers(${name} PRIVATE <algorithm> <cmath> <functional> <map> <memory> <optional> <string>
    <utility> <variant> <vector> <glm/geometric.hpp> <glm/mat4x4.hpp> <glm/vec2.hpp> <glm/vec3.hpp> <glm/vec4.hpp>)
endfunction()
set(FOLDWRIGHT_COMPUTING -O1 CACHE STRING "How rooms that compute are optimized in debug builds")
set(optimized_debug $<$<CONFIG:Debug>:${FOLDWRIGHT_COMPUTING}>)
add_precompiled(fw_precompiled)
add_precompiled(fw_precompiled_optimized ${optimized_debug})

# add_room(NAME [COMPUTES] [USES room...] [NEEDS imported-target...] [PRECOMPILES header...])
#
# One folder of src/ is one library. A room sees only the headers of the rooms it USES,
# because each room's headers are reachable through an include folder of its own: a wrong
# include does not compile. Files named main*.cpp are executables' and stay outside. PRECOMPILES names large headers
# that most of the room's sources include, read once for them.
function(add_room name)
  cmake_parse_arguments(ROOM "COMPUTES" "" "USES;NEEDS;PRECOMPILES" ${ARGN})
  set(folder ${PROJECT_SOURCE_DIR}/src/${name})
  set(view ${PROJECT_BINARY_DIR}/include/${name})
  file(MAKE_DIRECTORY ${view})
  file(CREATE_LINK ${folder} ${view}/${name} SYMBOLIC)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${folder}/*.cpp)
  list(FILTER sources EXCLUDE REGEX "/main[a-z_]*\\.cpp$")
  file(GLOB_RECURSE headers RELATIVE ${folder} CONFIGURE_DEPENDS ${folder}/*.hpp)
  list(TRANSFORM headers PREPEND ${view}/${name}/)
  add_library(fw_${name} STATIC ${sources})
  add_library(fw::${name} ALIAS fw_${name})
  target_sources(fw_${name} PUBLIC FILE_SET HEADERS BASE_DIRS ${view} FILES ${headers})
  foreach(room IN LISTS ROOM_USES)
    target_link_libraries(fw_${name} PUBLIC fw::${room})
  endforeach()
  target_link_libraries(fw_${name} PUBLIC ${ROOM_NEEDS} PRIVATE fw_warnings)
  if(ROOM_PRECOMPILES)
    target_precompile_headers(fw_${name} PRIVATE <string> <vector> ${ROOM_PRECOMPILES})
  elseif(ROOM_COMPUTES)
    target_compile_options(fw_${name} PRIVATE ${optimized_debug})
    target_precompile_headers(fw_${name} REUSE_FROM fw_precompiled_optimized)
  else()
    target_precompile_headers(fw_${name} REUSE_FROM fw_precompiled)
  endif()
endfunction()
