# The warnings of our own code; every one is an error. Libraries come in as SYSTEM.
add_library(fw_warnings INTERFACE)
target_compile_options(fw_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wnon-virtual-dtor
  -Woverloaded-virtual -Wold-style-cast -Werror
  $<$<CXX_COMPILER_ID:GNU>:-Wuseless-cast>)
