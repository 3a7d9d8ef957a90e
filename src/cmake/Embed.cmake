# embed_assets(TARGET): puts the shaders, the type and the demo lessons into the program, so that it needs no
# files beside it.
function(embed_assets target)
  set(files)
  foreach(font Andika-Regular.ttf Andika-Bold.ttf)
    find_file(FOLDWRIGHT_FONT_${font} ${font}
      PATHS /usr/share/fonts/truetype/andika /usr/local/share/fonts/truetype/andika
      NO_DEFAULT_PATH NO_CMAKE_FIND_ROOT_PATH)
    if(NOT FOLDWRIGHT_FONT_${font})
      message(FATAL_ERROR
        "The type ${font} was not found. Install the package fonts-sil-andika, "
        "or say where it is: -DFOLDWRIGHT_FONT_${font}=PATH")
    endif()
    mark_as_advanced(FOLDWRIGHT_FONT_${font})
    if(EMSCRIPTEN)  # a page is mailed, so it carries the characters alone that it shows
      set(cut ${PROJECT_BINARY_DIR}/type/${font})
      add_custom_command(
        OUTPUT ${cut}
        COMMAND Python3::Interpreter ${PROJECT_SOURCE_DIR}/src/cmake/cut_type.py ${FOLDWRIGHT_FONT_${font}} ${cut}
          ${PROJECT_SOURCE_DIR}/src/ui/fonts.cpp
        DEPENDS ${PROJECT_SOURCE_DIR}/src/cmake/cut_type.py ${PROJECT_SOURCE_DIR}/src/ui/fonts.cpp
        COMMENT "Cutting the type ${font} to the characters that are shown"
        VERBATIM)
      list(APPEND files ${cut})
    else()
      list(APPEND files ${FOLDWRIGHT_FONT_${font}})
    endif()
  endforeach()
  set(licenses ${PROJECT_BINARY_DIR}/licenses.txt)
  add_custom_command(
    OUTPUT ${licenses}
    COMMAND Python3::Interpreter ${PROJECT_SOURCE_DIR}/src/cmake/licenses.py ${licenses} ${PROJECT_SOURCE_DIR}/LICENSE
    DEPENDS ${PROJECT_SOURCE_DIR}/src/cmake/licenses.py ${PROJECT_SOURCE_DIR}/LICENSE
    COMMENT "Collecting the licenses of the libraries"
    VERBATIM)
  list(APPEND files ${licenses})
  file(GLOB ours CONFIGURE_DEPENDS
    ${PROJECT_SOURCE_DIR}/shaders/*.vert
    ${PROJECT_SOURCE_DIR}/shaders/*.frag
    ${PROJECT_SOURCE_DIR}/demo_scenes/*.json)
  list(APPEND files ${ours})

  set(list ${PROJECT_BINARY_DIR}/assets.txt)
  set(source ${PROJECT_BINARY_DIR}/assets_embedded.cpp)
  string(REPLACE ";" "\n" lines "${files}")
  file(CONFIGURE OUTPUT ${list} CONTENT "${lines}\n" @ONLY)
  add_custom_command(
    OUTPUT ${source}
    COMMAND Python3::Interpreter ${PROJECT_SOURCE_DIR}/src/cmake/embed.py ${source} ${list}
    DEPENDS ${files} ${list} ${PROJECT_SOURCE_DIR}/src/cmake/embed.py
    COMMENT "Embedding the shaders, the type and the demo lessons"
    VERBATIM)
  # A font is longer than the literals that the standard promises; every compiler that we use takes it.
  set_source_files_properties(${source} PROPERTIES
    COMPILE_OPTIONS "-Wno-overlength-strings;-O0;-g0" SKIP_PRECOMPILE_HEADERS ON)
  target_sources(${target} PRIVATE ${source})
endfunction()
