# One interface target that every target of the project links: warnings as errors, reproducible floating point, sanitizers.
add_library(plugside_compiler_rules INTERFACE)
target_compile_options(plugside_compiler_rules INTERFACE
  -Wall -Wextra -Wconversion -Wsign-conversion -Wshadow -Wdouble-promotion -Werror
  -ffp-contract=off) # a fused multiply-add rounds once: the same survey would plan differently on another machine
if(PLUGSIDE_SANITIZE)
  target_compile_options(plugside_compiler_rules INTERFACE
    -fsanitize=${PLUGSIDE_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(plugside_compiler_rules INTERFACE -fsanitize=${PLUGSIDE_SANITIZE})
endif()
