# Before a package is put together: manual pages and changes as Debian wants them, without the time of compression.
file(GLOB_RECURSE texts
  ${CPACK_TEMPORARY_DIRECTORY}/usr/share/man/*.1 ${CPACK_TEMPORARY_DIRECTORY}/*/usr/share/man/*.1
  ${CPACK_TEMPORARY_DIRECTORY}/usr/share/doc/*/changelog* ${CPACK_TEMPORARY_DIRECTORY}/*/usr/share/doc/*/changelog*)
list(REMOVE_DUPLICATES texts)
foreach(text IN LISTS texts)
  execute_process(COMMAND gzip -9nf ${text} COMMAND_ERROR_IS_FATAL ANY)
endforeach()
