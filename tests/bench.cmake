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
target_sources(bench_kernel PRIVATE bench/vtk_landmarks.cpp bench/field.cpp)
target_link_libraries(bench_kernel PRIVATE benchmark::benchmark ${VTK_LIBRARIES})

# Against CGAL's exact geodesics and VTK's Dijkstra. CGAL's templates work in double here and need no GMP.
set(CGAL_DISABLE_GMP ON)
set(CGAL_DO_NOT_WARN_ABOUT_CMAKE_BUILD_TYPE ON)
find_package(CGAL QUIET)
if(CGAL_FOUND)
  find_package(VTK REQUIRED COMPONENTS FiltersModeling)
  add_executable(bench_geodesics EXCLUDE_FROM_ALL bench/geodesics.cpp)
  target_link_libraries(bench_geodesics PRIVATE scalpmark_flags scalpmark_template_head benchmark::benchmark CGAL::CGAL
    VTK::FiltersModeling)
  get_target_property(cgal_includes CGAL::CGAL INTERFACE_INCLUDE_DIRECTORIES)
  if(cgal_includes)
    target_include_directories(bench_geodesics SYSTEM PRIVATE ${cgal_includes})
  endif()
  target_compile_definitions(bench_geodesics PRIVATE CGAL_DISABLE_GMP CGAL_NDEBUG)
endif()

add_executable(bench_process bench/process.cpp)
target_link_libraries(bench_process PRIVATE scalpmark_flags)

# No matter of time: how well thresholds are found in simulated people.
add_executable(bench_threshold bench/threshold.cpp)
target_link_libraries(bench_threshold PRIVATE scalpmark_flags scalpmark::geometry)

if(TARGET scalpmark_window_support)
  foreach(name drag pulled_tape long_use visits random_user window_times)
    add_executable(bench_${name} bench/${name}.cpp)
    scalpmark_drives_window(bench_${name})
  endforeach()
  # What is drawn is compared with VTK alone.
  find_package(VTK REQUIRED COMPONENTS RenderingOpenGL2)
  target_sources(bench_drag PRIVATE bench/bare_renderer.cpp)
endif()
