#pragma once

#include <string>

/// Folder of the project's sources, without a slash at its end: the shipped data, the demo and the tests' own
/// cases lie under it. Compiled once, so that no other object depends on where the project was checked out.
std::string sourceDirectory();
