#include "source_directory.h"

std::string sourceDirectory()
{
    return LAPWRIGHT_SOURCE_DIR;
}
