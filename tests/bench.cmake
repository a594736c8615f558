# Benchmarks: run by hand (scripts/bench), never by ctest.
find_package(benchmark REQUIRED)
find_package(VTK REQUIRED COMPONENTS CommonCore CommonDataModel FiltersCore)

if(NOT TARGET scalpmark_template_head)
  add_library(scalpmark_template_head STATIC support/template_head.cpp)
  target_link_libraries(scalpmark_template_head PUBLIC scalpmark::models PRIVATE scalpmark_flags)
  target_compile_definitions(scalpmark_template_head PRIVATE SCALPMARK_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
endif()

foreach(name kernel memory)
  add_executable(bench_${name} bench/${name}.cpp)
  target_link_libraries(bench_${name} PRIVATE scalpmark_flags scalpmark_template_head)
endforeach()
target_sources(bench_kernel PRIVATE bench/vtk_landmarks.cpp)
target_link_libraries(bench_kernel PRIVATE benchmark::benchmark ${VTK_LIBRARIES})
target_include_directories(bench_kernel SYSTEM PRIVATE /usr/include/vtk-9.1)

if(TARGET scalpmark_window_support)
  add_executable(bench_drag bench/drag.cpp)
  target_link_libraries(bench_drag PRIVATE scalpmark_flags scalpmark_window_support)
  target_compile_definitions(bench_drag PRIVATE SCALPMARK_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
endif()
