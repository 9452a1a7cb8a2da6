std::random_device dice;
