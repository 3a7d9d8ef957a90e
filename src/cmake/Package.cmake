# What a machine gets when the program is installed, by cmake --install or as a Debian package (target package): the
# program, its man page and completions, what a desktop asks for, the demo lessons, and the page where it was built.
include(GNUInstallDirs)
set(package ${PROJECT_SOURCE_DIR}/src/cmake/package)
set(app_id org.foldwright.foldwright)

# The man page and the completions say what --help says.
add_executable(foldwright_guide ${PROJECT_SOURCE_DIR}/src/cli/guide/main_guide.cpp)
target_link_libraries(foldwright_guide PRIVATE fw::cli fw_warnings)
file(STRINGS ${package}/${app_id}.metainfo.xml release_date REGEX "<release ")
string(REGEX REPLACE ".* date=\"([0-9-]+)\".*" "\\1" release_date "${release_date}")
set(guide ${PROJECT_BINARY_DIR}/guide)
file(MAKE_DIRECTORY ${guide})
add_custom_command(
  OUTPUT ${guide}/foldwright.1.gz ${guide}/foldwright.bash ${guide}/foldwright.zsh ${guide}/foldwright.fish
    ${guide}/changelog.gz
  COMMAND foldwright_guide ${guide} ${release_date}
  COMMAND ${CMAKE_COMMAND} -E copy ${package}/changelog ${guide}/changelog
  COMMAND gzip -9nf ${guide}/foldwright.1 ${guide}/changelog
  DEPENDS foldwright_guide ${package}/changelog ${package}/${app_id}.metainfo.xml
  COMMENT "Writing the man page and the completions"
  VERBATIM)
set(installed ${guide}/foldwright.1.gz)

# Pictures of the icon, for desktops that draw no SVG. Small ones have a drawing of their own.
find_program(RSVG_CONVERT rsvg-convert)
mark_as_advanced(RSVG_CONVERT)
foreach(size 16 24 32 48 64 128 256)
  if(NOT RSVG_CONVERT)
    message(STATUS "rsvg-convert was not found: the icon is installed as SVG alone")
    break()
  endif()
  set(drawing ${package}/foldwright.svg)
  if(size LESS 33)
    set(drawing ${package}/foldwright-small.svg)
  endif()
  set(picture ${PROJECT_BINARY_DIR}/icons/foldwright-${size}.png)
  add_custom_command(
    OUTPUT ${picture}
    COMMAND ${CMAKE_COMMAND} -E make_directory ${PROJECT_BINARY_DIR}/icons
    COMMAND ${RSVG_CONVERT} -w ${size} -h ${size} ${drawing} -o ${picture}
    DEPENDS ${drawing}
    COMMENT "Drawing the icon, ${size} pixels wide"
    VERBATIM)
  list(APPEND installed ${picture})
  install(FILES ${picture} DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps
    RENAME foldwright.png)
endforeach()
add_custom_target(install_files ALL DEPENDS ${installed})

set(own ${CMAKE_INSTALL_DATADIR}/foldwright)
install(TARGETS foldwright DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${guide}/foldwright.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${guide}/foldwright.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions
  RENAME foldwright)
install(FILES ${guide}/foldwright.zsh DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions RENAME _foldwright)
install(FILES ${guide}/foldwright.fish DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)
install(FILES ${package}/${app_id}.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${package}/${app_id}.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${package}/${app_id}.mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages
  RENAME ${app_id}.xml)
install(FILES ${package}/foldwright.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${guide}/changelog.gz DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES ${PROJECT_BINARY_DIR}/licenses.txt DESTINATION ${CMAKE_INSTALL_DOCDIR} RENAME copyright)
# The ending by which a lesson opens on a double-click.
file(GLOB lessons CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/demo_scenes/lantern*.json
  ${PROJECT_SOURCE_DIR}/demo_scenes/candle*.json)
foreach(lesson IN LISTS lessons)
  cmake_path(GET lesson STEM name)
  install(FILES ${lesson} DESTINATION ${own}/lessons RENAME ${name}.foldwright.json)
endforeach()
install(FILES ${PROJECT_SOURCE_DIR}/demo_scenes/lesson.schema.json DESTINATION ${own}/lessons)
# It is built on its own, and foldwright share looks for it there.
install(FILES ${PROJECT_SOURCE_DIR}/build/web/foldwright.html DESTINATION ${own} OPTIONAL)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_CONTACT "The Foldwright authors <authors@foldwright.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "explorer of solids and their nets, for middle-school math")
set(CPACK_PACKAGE_DESCRIPTION_FILE ${package}/description.txt)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES TRUE)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
  WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION education)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "shared-mime-info, hicolor-icon-theme")
include(CPack)
