# What scripts/sanitized runs: the tests of kernel and readers as the release build compiled them, linked with this build's
# kernel and readers, which carry sanitizers and counters. The tests themselves need neither, and compiling them once more
# takes longer than kernel and readers do. GCC's objects and clang's go together: one ABI, one standard library.
if(SCALPMARK_COMPILED_TESTS)
  set(compiled_tests ${SCALPMARK_COMPILED_TESTS}/tests)
  # Of an inline function that both have the linker takes the first: the one with sanitizers and counters.
  set(checked_objects $<TARGET_OBJECTS:scalpmark_geometry>)
  foreach(folder geometry models)
    if(folder STREQUAL models)
      list(APPEND checked_objects $<TARGET_OBJECTS:scalpmark_plain_models> $<TARGET_OBJECTS:scalpmark_models>)
    endif()
    file(GLOB_RECURSE objects CONFIGURE_DEPENDS ${compiled_tests}/CMakeFiles/test_${folder}.dir/*.o)
    add_executable(checked_${folder} ${checked_objects} ${objects})
    set_target_properties(checked_${folder} PROPERTIES LINKER_LANGUAGE CXX)
    target_link_libraries(checked_${folder} PRIVATE ${compiled_tests}/libscalpmark_test_main.a
      ${compiled_tests}/libscalpmark_test_program.a scalpmark_${folder})
  endforeach()
endif()
