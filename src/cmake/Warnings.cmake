# The warnings of our own code; every one is an error. Libraries come in as SYSTEM.
add_library(fw_warnings INTERFACE)
target_compile_options(fw_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wconversion -Wnon-virtual-dtor
  -Woverloaded-virtual -Wold-style-cast -Werror
  $<$<CXX_COMPILER_ID:GNU>:-Wuseless-cast>
  # In groups of sources, a private name of one would be shadowed by those of another.
  $<$<NOT:$<BOOL:${CMAKE_UNITY_BUILD}>>:-Wshadow>
  # g++ 12 sees writes past the end in std::string when it inlines at -O2, where there are none.
  "$<$<AND:$<CXX_COMPILER_ID:GNU>,$<CONFIG:Release>>:-Wno-array-bounds;-Wno-restrict;-Wno-stringop-overflow;-Wno-stringop-overread>")
