# How the libraries of Debian 12 are found. Nothing is downloaded and no code of theirs is kept here.
# Debian's own interpreter where there is one: the generator and the tests' modules are Debian packages.
if(EXISTS /usr/bin/python3)
  set(Python3_EXECUTABLE /usr/bin/python3)
endif()
find_package(Python3 REQUIRED COMPONENTS Interpreter)
if(EMSCRIPTEN)
  include(${CMAKE_CURRENT_LIST_DIR}/WebDependencies.cmake)
  return()
endif()
find_package(PkgConfig REQUIRED)
find_package(Boost REQUIRED)
find_package(nlohmann_json REQUIRED)
find_package(CLI11 REQUIRED)
pkg_check_modules(EGL REQUIRED IMPORTED_TARGET egl)
pkg_check_modules(GLFW REQUIRED IMPORTED_TARGET glfw3)
pkg_check_modules(IMGUI REQUIRED IMPORTED_TARGET imgui)
pkg_check_modules(CAIRO REQUIRED IMPORTED_TARGET cairo)

add_library(fw_boost INTERFACE)
target_link_libraries(fw_boost INTERFACE Boost::headers)

add_library(fw_glm INTERFACE)

add_library(fw_glfw INTERFACE)
target_link_libraries(fw_glfw INTERFACE PkgConfig::GLFW)

add_library(fw_imgui INTERFACE)
target_link_libraries(fw_imgui INTERFACE PkgConfig::IMGUI)

add_library(fw_cairo INTERFACE)
target_link_libraries(fw_cairo INTERFACE PkgConfig::CAIRO)

# The OpenGL loader is generated at build time; the specification it reads ships with the generator.
set(glad_dir ${PROJECT_BINARY_DIR}/glad)
add_custom_command(
  OUTPUT ${glad_dir}/src/gl.c ${glad_dir}/include/glad/gl.h
  COMMAND glad --reproducible --quiet --api gl:core=3.3 --extensions "" --out-path ${glad_dir} c
  COMMENT "Generating the OpenGL 3.3 core loader"
  VERBATIM)
add_library(fw_glad STATIC ${glad_dir}/src/gl.c ${glad_dir}/include/glad/gl.h)
target_include_directories(fw_glad SYSTEM PUBLIC ${glad_dir}/include)
target_link_libraries(fw_glad PUBLIC PkgConfig::EGL ${CMAKE_DL_LIBS})
