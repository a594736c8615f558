# Tests that drive the real window with real mouse and key events, on a display of their own; and
# the tour, which saves every screen into build/tour/ to be looked at.
find_package(Qt5 REQUIRED COMPONENTS Widgets Test)

add_library(scalpmark_window_support STATIC viewer/window/opened_window.cpp viewer/window/random_user.cpp
  viewer/window/practise_hands.cpp)
target_link_libraries(scalpmark_window_support PUBLIC scalpmark::window Qt5::Test scalpmark_test_program PRIVATE scalpmark_flags)
target_include_directories(scalpmark_window_support SYSTEM PUBLIC ${Qt5Test_INCLUDE_DIRS})

# What drives the window does not count: it is compiled for quick building, with one set of headers compiled
# beforehand for all of it (which asks for the same options and definitions everywhere).
set(window_definitions SCALPMARK_SOURCE_DIR="${PROJECT_SOURCE_DIR}" SCALPMARK_BINARY_DIR="${PROJECT_BINARY_DIR}")
target_compile_definitions(scalpmark_window_support PRIVATE ${window_definitions})
target_compile_options(scalpmark_window_support PRIVATE -O0)
target_precompile_headers(scalpmark_window_support PRIVATE <QtWidgets> <QtTest> <catch2/catch.hpp> <Eigen/Geometry>
  <functional> <memory> <optional> <string> <vector>)
function(scalpmark_drives_window target)
  target_link_libraries(${target} PRIVATE scalpmark_flags scalpmark_window_support)
  target_compile_definitions(${target} PRIVATE ${window_definitions})
  target_compile_options(${target} PRIVATE -O0)
  target_precompile_headers(${target} REUSE_FROM scalpmark_window_support)
  scalpmark_library_first(${target} scalpmark_window scalpmark_viewer scalpmark_models scalpmark_plain_models
    scalpmark_geometry)
endfunction()

file(GLOB window_tests CONFIGURE_DEPENDS viewer/window/*_test.cpp)
add_executable(test_window viewer/window/main.cpp viewer/window/every_screen.cpp ${window_tests})
scalpmark_drives_window(test_window)
scalpmark_batches(test_window)
catch_discover_tests(test_window TEST_PREFIX "window: " DISCOVERY_MODE PRE_TEST
  PROPERTIES TIMEOUT ${longest_s} ENVIRONMENT "${without_leak_check};${memory_as_program}")

add_dependencies(test_window scalpmark)
foreach(density 1.5 2)
  add_test(NAME "window: on a screen ${density} times as dense text keeps to its place"
    COMMAND test_window "text is drawn as large as the place it was given*")
  set_tests_properties("window: on a screen ${density} times as dense text keeps to its place" PROPERTIES
    ENVIRONMENT "QT_SCALE_FACTOR=${density};${without_leak_check}" TIMEOUT ${longest_s})
endforeach()
set(tour_parts tour tour_screens tour_coil visit_screens hands_tour tour_chair every_screen tour_settings practise_tour)
list(TRANSFORM tour_parts PREPEND viewer/window/)
list(TRANSFORM tour_parts APPEND .cpp)
add_executable(window_tour ${tour_parts})
scalpmark_drives_window(window_tour)
scalpmark_batches(window_tour)
