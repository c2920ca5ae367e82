# Tests of QML: lint as a test, and one harness for all tst_*.qml.

# lapwright_qml_lint(module...): one CTest entry a module; a warning fails it. /usr/bin/qmllint may be an older Qt's.
function(lapwright_qml_lint)
  find_program(LAPWRIGHT_QMLLINT qmllint PATHS /usr/lib/qt6/bin ${QT6_INSTALL_PREFIX}/${QT6_INSTALL_BINS} NO_DEFAULT_PATH REQUIRED)
  foreach(module ${ARGN})
    get_target_property(folder ${module} SOURCE_DIR)
    get_target_property(files ${module} QT_QML_MODULE_QML_FILES)
    get_target_property(output ${module} QT_QML_MODULE_OUTPUT_DIRECTORY)
    list(TRANSFORM files REPLACE "^([^/].*)$" "${folder}/\\1")
    add_test(NAME lint_${module} COMMAND python3 ${CMAKE_SOURCE_DIR}/tests/tools/qmllint.py ${LAPWRIGHT_QMLLINT} -I ${QT_QML_OUTPUT_DIRECTORY} -i ${output}/qmldir ${files})
  endforeach()
endfunction()

# lapwright_qml_test(name DEPENDS lib...): a Qt Quick Test program of every tst_*.qml beside the caller, with the
# setup of SETUP (a source that has a class Setup; see tests/look/setup.h) or ours.
function(lapwright_qml_test name)
  cmake_parse_arguments(ARG "" "SETUP" "DEPENDS" ${ARGN})
  if(NOT ARG_SETUP)
    set(ARG_SETUP ${CMAKE_SOURCE_DIR}/tests/look/qml_harness.cpp)
  endif()
  qt_add_executable(tst_${name} ${ARG_SETUP})
  set_target_properties(tst_${name} PROPERTIES AUTOMOC ON)
  target_compile_definitions(tst_${name} PRIVATE QUICK_TEST_SOURCE_DIR="${CMAKE_CURRENT_SOURCE_DIR}")
  target_link_libraries(tst_${name} PRIVATE Qt6::QuickTest Qt6::Quick lapwright_options ${ARG_DEPENDS})
  add_test(NAME ${name} COMMAND tst_${name} -import ${QT_QML_OUTPUT_DIRECTORY})
  lapwright_offscreen(${name})
endfunction()

# The test runs without a screen and with the plain style.
function(lapwright_offscreen name)
  set_tests_properties(${name} PROPERTIES ENVIRONMENT
    "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software;QT_QUICK_CONTROLS_STYLE=Basic;LSAN_OPTIONS=suppressions=${CMAKE_SOURCE_DIR}/tests/tools/leaks.txt:print_suppressions=0")
endfunction()
