#include "app/start.h"

int main(int argc, char** argv)
{
    return lapwright::field::run(argc, argv);
}
