# The viewer: commands, stage and pictures. The tests start their own virtual display.
find_package(Qt5 REQUIRED COMPONENTS Gui)
scalpmark_test(viewer scalpmark::viewer nlohmann_json::nlohmann_json Qt5::Gui)
if(TARGET test_viewer)
  scalpmark_batches(test_viewer)
  scalpmark_library_first(test_viewer scalpmark_viewer scalpmark_models scalpmark_plain_models scalpmark_geometry)
  add_dependencies(test_viewer scalpmark)
endif()
