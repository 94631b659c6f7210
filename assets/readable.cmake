# Before a package is made: everybody may read what is in it, whatever the umask of whoever packs it.
execute_process(COMMAND chmod -R u=rwX,go=rX ${CPACK_TEMPORARY_DIRECTORY} COMMAND_ERROR_IS_FATAL ANY)
