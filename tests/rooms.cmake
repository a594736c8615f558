# The order of the folders: a program that reads every include.
add_executable(test_rooms rooms/rooms.cpp rooms/rooms_test.cpp)
target_link_libraries(test_rooms PRIVATE scalpmark_flags scalpmark_test_main)
target_compile_definitions(test_rooms PRIVATE SCALPMARK_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
target_compile_options(test_rooms PRIVATE -O0)
catch_discover_tests(test_rooms TEST_PREFIX "rooms: " DISCOVERY_MODE PRE_TEST PROPERTIES TIMEOUT ${longest_s})
