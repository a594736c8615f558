# The viewer: commands, stage and pictures. The tests start their own virtual display.
scalpmark_test(viewer scalpmark::viewer nlohmann_json::nlohmann_json)
if(TARGET test_viewer)
  add_dependencies(test_viewer scalpmark)
endif()
