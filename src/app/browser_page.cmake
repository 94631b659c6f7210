# Puts the page's own files beside the program, with the words in them:
# cmake -DPAGE=... -DWEB=... -DWORDS=... -P browser_page.cmake
include(${WORDS})
foreach(file index.html manifest.webmanifest)
  configure_file(${PAGE}/${file} ${WEB}/${file} @ONLY)
endforeach()
foreach(file page.css page.js icon.svg)
  configure_file(${PAGE}/${file} ${WEB}/${file} COPYONLY)
endforeach()
set(files index.html page.css page.js manifest.webmanifest icon.svg)

# The worker keeps one version of everything, named by what is in it.
list(APPEND files slabside.js slabside.wasm slabside.data learner.js learner.wasm)
set(hashes)
foreach(file ${files})
  file(SHA256 ${WEB}/${file} hash)
  string(APPEND hashes ${hash})
endforeach()
string(SHA256 version "${hashes}")
string(SUBSTRING ${version} 0 16 version)
list(TRANSFORM files PREPEND "'")
list(TRANSFORM files APPEND "'")
list(JOIN files ", " files)
configure_file(${PAGE}/worker.js ${WEB}/worker.js @ONLY)
