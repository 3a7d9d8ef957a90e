#include "cli/verb.hpp"

int main(int argc, char** argv) { return fw::cli::run(argc, argv); }
