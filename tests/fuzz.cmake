# Hostile bytes for everything that reads files. With the tests: a short check with GCC. With clang and
# SCALPMARK_FUZZ (scripts/fuzz): libFuzzer targets under the address and undefined-behaviour sanitizers.
find_package(nlohmann_json REQUIRED)
find_package(ZLIB REQUIRED)
add_library(scalpmark_fuzz_readers STATIC fuzz/readers.cpp)
target_link_libraries(scalpmark_fuzz_readers
  PUBLIC scalpmark::models nlohmann_json::nlohmann_json ZLIB::ZLIB PRIVATE scalpmark_flags)

set(fuzzed case obj ply stl gltf glb nii nii.gz)
if(SCALPMARK_FUZZ)
  foreach(name IN LISTS fuzzed)
    add_executable(fuzz_${name} fuzz/target.cpp)
    target_compile_definitions(fuzz_${name} PRIVATE SCALPMARK_FUZZED="${name}")
    target_link_libraries(fuzz_${name} PRIVATE scalpmark_fuzz_readers)
    target_link_options(fuzz_${name} PRIVATE -fsanitize=fuzzer)
  endforeach()
else()
  add_executable(fuzz_replay fuzz/replay.cpp)
  target_link_libraries(fuzz_replay PRIVATE scalpmark_fuzz_readers scalpmark_flags)
  foreach(name IN LISTS fuzzed)
    add_test(NAME "fuzz: spoilt ${name} files are read or refused in a sentence" COMMAND fuzz_replay ${name} 5 400 $<TARGET_FILE:scalpmark>)
    set_tests_properties("fuzz: spoilt ${name} files are read or refused in a sentence" PROPERTIES TIMEOUT 120)
  endforeach()
endif()
