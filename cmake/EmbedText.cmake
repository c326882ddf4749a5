# embed_text(target file variable): makes `extern const char variable[]` in namespace plugside::embedded from a text file,
# so that the programs carry their texts and look for no file at run time.
function(embed_text target file variable)
  set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${file}")
  file(READ "${file}" content)
  # A string literal may hold at most 64 KiB everywhere: cut into lines, the compiler joins them.
  string(REPLACE "\\" "\\\\" content "${content}")
  string(REPLACE "\"" "\\\"" content "${content}")
  string(REPLACE "\t" "\\t" content "${content}")
  string(REPLACE "\n" "\\n\"\n\"" content "${content}")
  set(source "${CMAKE_CURRENT_BINARY_DIR}/embedded_${variable}.cpp")
  file(CONFIGURE OUTPUT "${source}" CONTENT
    "namespace plugside::embedded {\nextern const char ${variable}[];\nconst char ${variable}[] = \"@content@\";\n}\n" @ONLY)
  target_sources(${target} PRIVATE "${source}")
endfunction()
