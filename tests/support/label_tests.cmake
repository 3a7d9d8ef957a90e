# Read by ctest once for each room, with the names of its tests in `names`. A word in a test's name gives its label:
#   Slow     slow     left out under the sanitizers and by the preset "quick"
#   Display  display  opens a window; no two run at once, since windows share one pointer and one focus; left out under
#                     the sanitizers, whose frames are too slow for a user's pace
#   Gl       gl       draws with OpenGL, off screen
# OpenGL drivers keep memory until the process ends, which is not ours to mend: the leak check is off for these.
foreach(test IN LISTS names)
  set(labels)
  if(test MATCHES "Slow")
    list(APPEND labels slow)
  endif()
  if(test MATCHES "Display")
    list(APPEND labels display)
  endif()
  if(test MATCHES "Gl([^a-z]|$)")
    list(APPEND labels gl)
  endif()
  if(labels)
    set_tests_properties("${test}" PROPERTIES LABELS "${labels}")
  endif()
  if(test MATCHES "Display")
    set_tests_properties("${test}" PROPERTIES RESOURCE_LOCK display COST 20)
  endif()
  if(test MATCHES "Display|Gl([^a-z]|$)")
    set_tests_properties("${test}" PROPERTIES ENVIRONMENT "ASAN_OPTIONS=detect_leaks=0")
  endif()
endforeach()
