# One interface target that every target of the project links: warnings as errors, reproducible floating point, sanitizers.
add_library(plugside_compiler_rules INTERFACE)
target_compile_options(plugside_compiler_rules INTERFACE
  -Wall -Wextra -Wconversion -Wsign-conversion -Wshadow -Wdouble-promotion -Werror
  -ffp-contract=off) # a fused multiply-add rounds once: the same survey would plan differently on another machine
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  target_compile_options(plugside_compiler_rules INTERFACE -Wno-restrict) # false alarm on joined std::string: GCC bug 105651
endif()
if(PLUGSIDE_SANITIZE)
  target_compile_options(plugside_compiler_rules INTERFACE
    -fsanitize=${PLUGSIDE_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer
    -Wno-maybe-uninitialized) # false alarms on instrumented std::function (GCC 12, inside std::regex)
  target_link_options(plugside_compiler_rules INTERFACE -fsanitize=${PLUGSIDE_SANITIZE})
endif()
