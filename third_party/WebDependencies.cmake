# What the page is built from: headers of Debian's packages, and the sources of its package imgui, which
# third_party/bootstrap.sh unpacks into build/. A browser has its own window, and OpenGL is linked.
set(FOLDWRIGHT_IMGUI_SOURCES ${PROJECT_SOURCE_DIR}/build/sources/imgui CACHE PATH "The unpacked source package imgui")
if(NOT EXISTS ${FOLDWRIGHT_IMGUI_SOURCES}/imgui.cpp)
  message(FATAL_ERROR "There are no sources of Dear ImGui in ${FOLDWRIGHT_IMGUI_SOURCES}. "
    "Run sh third_party/bootstrap.sh web, which unpacks Debian's source package there.")
endif()

# Only these libraries: the system's other headers are those of another machine than a browser's.
set(web_headers ${PROJECT_BINARY_DIR}/system)
file(MAKE_DIRECTORY ${web_headers})
foreach(library boost glm nlohmann)
  file(CREATE_LINK /usr/include/${library} ${web_headers}/${library} SYMBOLIC)
endforeach()

add_library(fw_boost INTERFACE)
target_include_directories(fw_boost SYSTEM INTERFACE ${web_headers})
add_library(fw_glm INTERFACE)
target_include_directories(fw_glm SYSTEM INTERFACE ${web_headers})
add_library(nlohmann_json INTERFACE)
target_include_directories(nlohmann_json SYSTEM INTERFACE ${web_headers})
add_library(nlohmann_json::nlohmann_json ALIAS nlohmann_json)

add_library(fw_imgui STATIC ${FOLDWRIGHT_IMGUI_SOURCES}/imgui.cpp ${FOLDWRIGHT_IMGUI_SOURCES}/imgui_draw.cpp
  ${FOLDWRIGHT_IMGUI_SOURCES}/imgui_tables.cpp ${FOLDWRIGHT_IMGUI_SOURCES}/imgui_widgets.cpp)
target_include_directories(fw_imgui SYSTEM PUBLIC ${FOLDWRIGHT_IMGUI_SOURCES})
# Debian's package is built with these as well; the demo windows are left out.
target_compile_definitions(fw_imgui PRIVATE IMGUI_DISABLE_DEMO_WINDOWS)
# It draws the type before the first frame, which has to be quick.
target_compile_options(fw_imgui PRIVATE -w -O2)

add_library(fw_glfw INTERFACE)
add_library(fw_glad INTERFACE)
